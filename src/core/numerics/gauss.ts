/** Gauss–Legendre quadrature on [0, 1]. */
const half4 = [0.3399810435848563, 0.8611363115940526];
const weight4 = [0.6521451548625461, 0.3478548451374538];

/** Four nodes on [0, 1], exact to degree 7. */
export const gauss4 = {
  x: [(1 - half4[1]) / 2, (1 - half4[0]) / 2, (1 + half4[0]) / 2, (1 + half4[1]) / 2],
  w: [weight4[1] / 2, weight4[0] / 2, weight4[0] / 2, weight4[1] / 2],
} as const;

const half2 = 0.5773502691896257;

/** Two nodes on [0, 1], exact to degree 3; either has half the weight. */
export const gauss2 = { x: [(1 - half2) / 2, (1 + half2) / 2] } as const;

const half3 = 0.7745966692414834;

/** Three nodes on [0, 1], exact to degree 5. */
export const gauss3 = { x: [(1 - half3) / 2, 1 / 2, (1 + half3) / 2], w: [5 / 18, 8 / 18, 5 / 18] } as const;
