/** Documents, as plain GETs that answer a PDF, and pictures; apart from the operations, so that a screen with a link to paper loads no schema. */
export const documents = {
  photo: (kitchenId: string, photoId: string) => `/api/kitchens/${kitchenId}/photos/${photoId}`,
  methodCard: (kitchenId: string, versionId: string) =>
    `/api/kitchens/${kitchenId}/versions/${versionId}/method-card.pdf`,
  batchRecord: (kitchenId: string, batchId: string) =>
    `/api/kitchens/${kitchenId}/batches/${batchId}/batch-record.pdf`,
  specificationSheet: (kitchenId: string, versionId: string) =>
    `/api/kitchens/${kitchenId}/specification-versions/${versionId}/specification.pdf`,
  authorityRequest: (kitchenId: string, requestId: string) =>
    `/api/kitchens/${kitchenId}/authority-requests/${requestId}/question.pdf`,
};
