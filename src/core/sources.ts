/**
 * The bibliography. Every constant, rule and check names one of these keys; a page that prints a number prints its
 * citation from here. Keys are kebab-case: first author or issuing body, then subject or year.
 */
export interface Source {
  /** Full citation as printed. */
  readonly citation: string;
  readonly year?: number;
  readonly doi?: string;
  readonly url?: string;
}

export const sources: Record<string, Source> = {
  // What is not a publication, named as honestly as what is.
  'common-practice': { citation: 'Common practice in professional kitchens; no published source.' },
  'from-memory': { citation: 'From memory of the trade or of a handbook; not read again for this program.' },
  'own-computation': {
    citation: 'Computed by this program; the method is described where the value is used.',
  },
  'own-assumption': { citation: 'Assumed by this program for want of a measurement.' },
  'user-input': { citation: 'Stated by the user.' },

  // Properties of food.
  'choi-okos-1986': {
    citation:
      'Choi, Y. & Okos, M. R. (1986). Effects of temperature and composition on the thermal properties of foods. In: Food Engineering and Process Applications, vol. 1: Transport Phenomena, 93–101. Elsevier, London.',
    year: 1986,
  },
  'ashrae-refrigeration-properties': {
    citation: 'ASHRAE Handbook—Refrigeration, chapter “Thermal Properties of Foods”, tables 1 to 3.',
  },
  'levy-1981': {
    citation:
      'Levy, F. L. (1981). A modified Maxwell–Eucken equation for calculating the thermal conductivity of two-component solutions or mixtures. International Journal of Refrigeration 4(4), 223–225.',
    year: 1981,
  },
  'eucken-1940': {
    citation:
      'Eucken, A. (1940). Allgemeine Gesetzmäßigkeiten für das Wärmeleitvermögen verschiedener Stoffarten und Aggregatzustände. Forschung auf dem Gebiete des Ingenieurwesens 11(1), 6–20.',
    year: 1940,
  },
  'kopelman-1966': {
    citation:
      'Kopelman, I. J. (1966). Transient heat transfer and thermal properties in food systems. PhD thesis, Michigan State University.',
    year: 1966,
  },
  'fricke-becker-2001': {
    citation:
      'Fricke, B. A. & Becker, B. R. (2001). Evaluation of thermophysical property models for foods. HVAC&R Research 7(4), 311–330.',
    year: 2001,
  },
  'pham-willix-1989': {
    citation:
      'Pham, Q. T. & Willix, J. (1989). Thermal conductivity of fresh lamb meat, offals and fat in the range −40 to +30 °C: measurements and correlations. Journal of Food Science 54(3), 508–515.',
    year: 1989,
  },
  'sweat-haugh-stadelman-1973': {
    citation:
      'Sweat, V. E., Haugh, C. G. & Stadelman, W. J. (1973). Thermal conductivity of chicken meat at temperatures between −75 and 20 °C. Journal of Food Science 38(1), 158–160.',
    year: 1973,
  },
  'marcotte-2008': {
    citation:
      'Marcotte, M., Taherian, A. R. & Karimi, Y. (2008). Thermophysical properties of processed meat and poultry products. Journal of Food Engineering 88(3), 315–322.',
    year: 2008,
  },
  'chang-1998': {
    citation:
      'Chang, H. C., Carpenter, J. A. & Toledo, R. T. (1998). Modeling heat transfer during oven roasting of unstuffed turkeys. Journal of Food Science 63(2), 257–261.',
    year: 1998,
  },

  // Heat conduction and surfaces.
  'carslaw-jaeger-1959': {
    citation:
      'Carslaw, H. S. & Jaeger, J. C. (1959). Conduction of Heat in Solids, 2nd ed. Oxford University Press.',
    year: 1959,
  },
  'incropera-dewitt': {
    citation:
      'Incropera, F. P., DeWitt, D. P., Bergman, T. L. & Lavine, A. S. Fundamentals of Heat and Mass Transfer, 6th ed., chapter 5 and table 5.1; equations 5.63, 7.54, 10.40. Wiley.',
  },
  'cengel-heat-transfer': {
    citation:
      'Çengel, Y. A. Heat Transfer: A Practical Approach, 2nd ed., chapter 4, table 4-1 and examples. McGraw-Hill.',
  },
  'singh-heldman': {
    citation:
      'Singh, R. P. & Heldman, D. R. Introduction to Food Engineering, 4th ed., chapter 4. Academic Press.',
  },
  'bank-1985': {
    citation:
      'Bank, R. E., Coughran, W. M., Fichtner, W., Grosse, E. H., Rose, D. J. & Smith, R. K. (1985). Transient simulation of silicon devices and circuits. IEEE Transactions on Electron Devices 32(10), 1992–2007.',
    year: 1985,
  },
  'hosea-shampine-1996': {
    citation:
      'Hosea, M. E. & Shampine, L. F. (1996). Analysis and implementation of TR-BDF2. Applied Numerical Mathematics 20(1–2), 21–37.',
    year: 1996,
  },
  'pannu-castaigne-arul': {
    citation:
      'Pannu, K., Castaigne, F. & Arul, J. Heat transfer coefficients in steam processing of food: review of published values (Zhang & Cavalieri 1991; Tung et al. 1990; Skjöldebrand & Ohlsson 1993). In a food-engineering handbook, CRC Press.',
  },
  'ryland-2006': {
    citation:
      'Ryland et al. (2006). Cooling of hams in air: surface coefficients with and without mass transfer.',
    year: 2006,
  },
  'baldwin-2012': {
    citation:
      'Baldwin, D. E. (2012). Sous vide cooking: a review. International Journal of Gastronomy and Food Science 1(1), 15–30.',
    year: 2012,
  },
  'hubbard-farkas-1999': {
    citation:
      'Hubbard, L. J. & Farkas, B. E. (1999). A method for determining the convective heat transfer coefficient during immersion frying. Journal of Food Process Engineering 22(3), 201–214.',
    year: 1999,
  },
  'mir-bel-2012': {
    citation:
      'Mir-Bel, J., Oria, R. & Salvador, M. L. (2012). Influence of temperature on heat transfer coefficient during moderate vacuum deep-fat frying. Journal of Food Engineering 113(2), 167–176.',
    year: 2012,
  },
  'sosa-morales-2006': {
    citation:
      'Sosa-Morales, M. E., Orzuna-Espíritu, R. & Vélez-Ruiz, J. F. (2006). Mass, thermal and quality aspects of deep-fat frying of pork meat. Journal of Food Engineering 77(3), 731–738.',
    year: 2006,
  },
  'baik-1999': {
    citation:
      'Baik, O. D., Grabowski, S., Trigui, M., Marcotte, M. & Castaigne, F. (1999). Heat transfer coefficients on cakes baked in a tunnel type industrial oven. Journal of Food Science 64(4), 688–694.',
    year: 1999,
  },
  'james-james-2002': {
    citation:
      'James, S. J. & James, C. (2002). Meat Refrigeration. Woodhead Publishing, Cambridge. Table 16.7.',
    year: 2002,
  },

  // Lethality.
  'bigelow-1921': {
    citation:
      'Bigelow, W. D. (1921). The logarithmic nature of thermal death time curves. Journal of Infectious Diseases 29(5), 528–536.',
    year: 1921,
  },
};

/**
 * The full citation of a source key.
 * Throws for a key that the bibliography does not hold, so that no number is printed with a source that nobody can find.
 * @example cite('choi-okos-1986').startsWith('Choi') // true
 */
export function cite(key: string): string {
  const source = sources[key];
  if (source === undefined) throw new RangeError(`no source ${JSON.stringify(key)} in the bibliography`);
  return source.citation;
}
