/** The usual cautions, and whose word stands above the program's. They are on every printed page. */
import type { Kitchen } from '../contract/records.ts';

const names: Readonly<Record<Kitchen['place'], string>> = {
  'GB-ENG': 'England',
  'GB-WLS': 'Wales',
  'GB-SCT': 'Scotland',
  'GB-NIR': 'Northern Ireland',
  EU: 'European Union',
  US: 'United States',
};

export const placeName = (place: Kitchen['place']): string => names[place];

const authorities: Readonly<Record<Kitchen['place'], string>> = {
  'GB-ENG': 'Your local authority’s environmental health team and the Food Standards Agency',
  'GB-WLS': 'Your local authority’s environmental health team and the Food Standards Agency',
  'GB-SCT': 'Your local authority’s environmental health team and Food Standards Scotland',
  'GB-NIR': 'Your district council and the Food Standards Agency',
  EU: 'The competent authority of your country',
  US: 'Your state or local regulatory authority, the FDA and the USDA’s FSIS',
};

/** Who has the last word where the kitchen is. */
export const authorityOf = (place: Kitchen['place']): string => authorities[place];

/** The sentence that stands on every page. */
export const deference = (place: Kitchen['place']): string =>
  `Advice from a model and published figures, not a licence. ${placeName(place)}: ${authorityOf(place)}, and people qualified in food safety, have the last word.`;

export const cookingCautions: readonly string[] = [
  'Reckoned for the shape, start and medium on this card. A fatter, colder or tighter-packed piece needs longer: probe it.',
  'Probe the coldest point, with a checked probe. One reading is one place; time at temperature decides, not a peak.',
  'Heat does not undo toxin already formed. If time or temperature was out before cooking, ask; when in doubt, throw it out.',
  'Pregnant, very young, old or ill guests: ask what they may eat. Allergens: check every label.',
];
