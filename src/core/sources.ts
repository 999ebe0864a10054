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
  /** Volume, issue or pages were filled in from memory; `cite` says so. */
  readonly remembered?: true;
}

/** How a value was had. 'read': in the source itself; 'secondary': in copies of it; the rest as the words say. */
export type Confidence = 'read' | 'secondary' | 'memory' | 'computed' | 'common practice' | 'assumption';

/** One thing an answer rests on. `source` is a key of the bibliography. */
export interface Basis {
  readonly what: string;
  readonly source: string;
  readonly confidence: Confidence;
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

  // Fitting.
  'seber-wild-1989': {
    citation:
      'Seber, G. A. F. & Wild, C. J. (1989). Nonlinear Regression. Wiley, New York. Chapters 2, 3 and 5.',
    year: 1989,
    remembered: true,
  },
  'bates-watts-1988': {
    citation:
      'Bates, D. M. & Watts, D. G. (1988). Nonlinear Regression Analysis and Its Applications. Wiley, New York. Chapter 6: profile t.',
    year: 1988,
    remembered: true,
  },
  'bayley-hammersley-1946': {
    citation:
      'Bayley, G. V. & Hammersley, J. M. (1946). The “effective” number of independent observations in an autocorrelated time series. Supplement to the Journal of the Royal Statistical Society 8(2), 184–197.',
    year: 1946,
    remembered: true,
  },

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
    remembered: true,
  },
  'eucken-1940': {
    citation:
      'Eucken, A. (1940). Allgemeine Gesetzmäßigkeiten für das Wärmeleitvermögen verschiedener Stoffarten und Aggregatzustände. Forschung auf dem Gebiete des Ingenieurwesens 11(1), 6–20.',
    year: 1940,
    remembered: true,
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
    remembered: true,
  },
  'pham-willix-1989': {
    citation:
      'Pham, Q. T. & Willix, J. (1989). Thermal conductivity of fresh lamb meat, offals and fat in the range −40 to +30 °C: measurements and correlations. Journal of Food Science 54(3), 508–515 (abstract).',
    year: 1989,
    remembered: true,
  },
  'sweat-haugh-stadelman-1973': {
    citation:
      'Sweat, V. E., Haugh, C. G. & Stadelman, W. J. (1973). Thermal conductivity of chicken meat at temperatures between −75 and 20 °C. Journal of Food Science 38(1), 158–160.',
    year: 1973,
    remembered: true,
  },
  'chang-1998': {
    citation:
      'Chang, H. C., Carpenter, J. A. & Toledo, R. T. (1998). Modeling heat transfer during oven roasting of unstuffed turkeys. Journal of Food Science 63(2), 257–261.',
    year: 1998,
    remembered: true,
  },
  'marcotte-2008': {
    citation:
      'Marcotte, M., Taherian, A. R. & Karimi, Y. (2008). Thermophysical properties of processed meat and poultry products. Journal of Food Engineering 88(3), 315–322 (abstract).',
    year: 2008,
    remembered: true,
  },
  'james-james-2002': {
    citation:
      'James, S. J. & James, C. (2002). Meat Refrigeration. Woodhead, Cambridge; table 13.2, specific heats of meat (after Morley 1972), and table 16.7, cooling times of cooked joints; read in a copy.',
    year: 2002,
  },
  'burfoot-1990': {
    citation:
      'Burfoot, D., Self, K. P., Hudson, W. R., Wilkins, T. J. & James, S. J. (1990). Effect of cooking and cooling method on the processing times, mass losses and bacterial condition of large meat joints. International Journal of Food Science & Technology 25, 657–667; abstract, and times as given in James & James, Meat Refrigeration (2002), table 16.7.',
    year: 1990,
    doi: '10.1111/j.1365-2621.1990.tb01127.x',
  },
  geankoplis: {
    citation:
      'Geankoplis, C. J. Transport Processes and Separation Process Principles, 4th ed., appendix A.4, heat capacities of foods. Prentice Hall.',
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
  'earle-unit-operations': {
    citation:
      'Earle, R. L. & Earle, M. D. Unit Operations in Food Processing, web edition. New Zealand Institute of Food Science and Technology; appendix 7, thermal properties, and its rules by water content.',
  },
  'chen-marks-murphy-1999': {
    citation:
      'Chen, H., Marks, B. P. & Murphy, R. Y. (1999). Modeling coupled heat and mass transfer for convection cooking of chicken patties. Journal of Food Engineering 42(3), 139–146; its specific heat as quoted in a description of the model.',
    year: 1999,
    remembered: true,
  },
  'mir-bel-2012': {
    citation:
      'Mir-Bel, J., Oria, R. & Salvador, M. L. (2012). Influence of temperature on heat transfer coefficient during moderate vacuum deep-fat frying. Journal of Food Engineering 113(2), 167–176 (abstract).',
    year: 2012,
    remembered: true,
  },
  'singh-heldman': {
    citation:
      'Singh, R. P. & Heldman, D. R. Introduction to Food Engineering, 4th ed., chapter 4. Academic Press.',
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
    remembered: true,
  },
  'sosa-morales-2006': {
    citation:
      'Sosa-Morales, M. E., Orzuna-Espíritu, R. & Vélez-Ruiz, J. F. (2006). Mass, thermal and quality aspects of deep-fat frying of pork meat. Journal of Food Engineering 77(3), 731–738.',
    year: 2006,
    remembered: true,
  },
  'baik-1999': {
    citation:
      'Baik, O. D., Grabowski, S., Trigui, M., Marcotte, M. & Castaigne, F. (1999). Heat transfer coefficients on cakes baked in a tunnel type industrial oven. Journal of Food Science 64(4), 688–694.',
    year: 1999,
    remembered: true,
  },

  // Salt.
  'crank-1975': {
    citation: 'Crank, J. (1975). The Mathematics of Diffusion, 2nd edition. Clarendon Press, Oxford.',
    year: 1975,
  },
  'pitzer-mayorga-1973': {
    citation:
      'Pitzer, K. S. & Mayorga, G. (1973). Thermodynamics of electrolytes. II. Activity and osmotic coefficients for strong electrolytes with one or both ions univalent. Journal of Physical Chemistry 77(19), 2300–2308.',
    year: 1973,
    remembered: true,
  },
  'robinson-stokes-1959': {
    citation:
      'Robinson, R. A. & Stokes, R. H. (1959). Electrolyte Solutions, 2nd edition. Butterworths, London.',
    year: 1959,
    remembered: true,
  },
  'resnik-chirife-1988': {
    citation:
      'Resnik, S. L. & Chirife, J. (1988). Proposed theoretical water activity values at various temperatures for selected solutions to be used as reference sources in the range of microbial growth. Journal of Food Protection 51, 419.',
    year: 1988,
    remembered: true,
  },
  'eu-1333-2008': {
    citation:
      'Regulation (EC) No 1333/2008 on food additives, annex II, as it stood before 9 October 2025 and as retained in Great Britain; figures as in SI 2007/1778 and in EFSA (2017), table 5.',
    year: 2008,
  },
  'eu-2023-2108': {
    citation:
      'Commission Regulation (EU) 2023/2108 amending annex II to Regulation (EC) No 1333/2008 as regards nitrites (E 249–250) and nitrates (E 251–252); applies from 9 October 2025.',
    year: 2023,
    remembered: true,
  },
  'efsa-nitrites-2017': {
    citation:
      'EFSA Panel on Food Additives (2017). Re-evaluation of potassium nitrite (E 249) and sodium nitrite (E 250) as food additives. EFSA Journal 15(6):4786, table 5.',
    year: 2017,
    remembered: true,
  },
  'cfr-9-424-21': {
    citation: '9 CFR 424.21(c), use of food ingredients and sources of radiation: curing agents (USDA FSIS).',
  },
  'fsis-7620-3': {
    citation:
      'USDA FSIS (1995). Processing Inspectors’ Calculations Handbook, Directive 7620.3, revised 1995.',
    year: 1995,
  },
  'labuza-saturated-salts': {
    citation:
      'Water activity of saturated sodium chloride, ln a_w = 23.1092/T − 0.3607, a fit attributed to T. P. Labuza, as reproduced in secondary tables.',
  },
  'ross-1975': {
    citation:
      'Ross, K. D. (1975). Estimation of water activity in intermediate moisture foods. Food Technology 29, 26.',
    year: 1975,
    remembered: true,
  },
  'norrish-1966': {
    citation:
      'Norrish, R. S. (1966). An equation for the activity coefficients and equilibrium relative humidities of water in confectionery syrups. Journal of Food Technology 1, 25.',
    year: 1966,
    remembered: true,
  },
  'brine-density-table': {
    citation:
      'Density of sodium chloride solutions at 20 °C with temperature slope, after Poradnik fizykochemiczny (WNT, Warsaw 1974) and the International Critical Tables.',
    year: 1974,
  },
  'rogers-pitzer-1982': {
    citation:
      'Rogers, P. S. Z. & Pitzer, K. S. (1982). Volumetric properties of aqueous sodium chloride solutions. Journal of Physical and Chemical Reference Data 11(1), 15–81; as tabulated in the CRC Handbook of Chemistry and Physics.',
    year: 1982,
    remembered: true,
  },
  'smithsonian-tables-1956': {
    citation:
      'Forsythe, W. E. (1956). Smithsonian Physical Tables, 9th ed., Smithsonian Institution, Washington: freezing point lowering by electrolytes; as tabulated in the CRC Handbook of Chemistry and Physics.',
    year: 1956,
  },
  'usda-ars-water-activity': {
    citation:
      'USDA Agricultural Research Service, water activity of sodium chloride solutions, as quoted; the document was not noted.',
  },
  'langes-handbook-5-13': {
    citation: 'Lange’s Handbook of Chemistry, table 5.13, freezing points of sodium chloride solutions.',
  },
  'salt-solubility-table': {
    citation:
      'Solubility of sodium chloride in water and the salometer scale at 60 °F, tables of the salt industry.',
  },
  'pork-salting-2015': {
    citation:
      '“Influence of Brine Concentration … Meat Salting” (2015). Springer; effective diffusivity of salt in pork loin at 5 °C. Title shortened as it was noted, authors not noted.',
    year: 2015,
  },
  'fish-skin-salt-1992': {
    citation:
      'Cookery Science 25 (1992), 283 (J-STAGE): apparent diffusivity of salt in fish flesh and in skin with its fat. Title and authors not noted.',
    year: 1992,
  },
  'fsa-vacuum-packing-2020': {
    citation:
      'Food Standards Agency and Food Standards Scotland. The safety and shelf-life of vacuum and modified atmosphere packed chilled foods with respect to non-proteolytic Clostridium botulinum, revision of December 2020.',
    year: 2020,
    remembered: true,
  },

  // Steam, humid air, freezing.
  'iapws-if97': {
    citation:
      'International Association for the Properties of Water and Steam. Revised Release on the IAPWS Industrial Formulation 1997 for the Thermodynamic Properties of Water and Steam (R7-97), region 4, tables 34 to 36.',
    year: 2012,
  },
  'iapws-sr1-86': {
    citation:
      'International Association for the Properties of Water and Steam. Revised Supplementary Release on Saturation Properties of Ordinary Water Substance (SR1-86).',
    year: 1992,
  },
  'ohio-steam-table': {
    citation:
      'Ohio University, Department of Mechanical Engineering. Thermodynamic property tables: saturation properties for steam, temperature table (0.01 °C to 150 °C).',
    url: 'https://people.ohio.edu/trembly/mechanical/thermo/property_tables/H2O/H2O_TempSat1.html',
  },
  'iapws-r14-08': {
    citation:
      'International Association for the Properties of Water and Steam. Revised Release on the Pressure along the Melting and Sublimation Curves of Ordinary Water Substance (R14-08).',
    year: 2011,
  },
  'iapws-sr6-08': {
    citation:
      'International Association for the Properties of Water and Steam. Revised Supplementary Release on Properties of Liquid Water at 0.1 MPa (SR6-08).',
    year: 2011,
  },
  'iso-2533-atmosphere': { citation: 'ISO 2533:1975. Standard Atmosphere.', year: 1975 },
  'ashrae-fundamentals-psychrometrics': {
    citation: 'ASHRAE Handbook—Fundamentals, chapter “Psychrometrics”.',
  },
  'chilton-colburn-1934': {
    citation:
      'Chilton, T. H. & Colburn, A. P. (1934). Mass transfer (absorption) coefficients: prediction from data on heat transfer and fluid friction. Industrial & Engineering Chemistry 26(11), 1183–1187.',
    year: 1934,
    remembered: true,
  },
  'churchill-chu-1975': {
    citation:
      'Churchill, S. W. & Chu, H. H. S. (1975). Correlating equations for laminar and turbulent free convection from a horizontal cylinder. International Journal of Heat and Mass Transfer 18(9), 1049–1053.',
    year: 1975,
    remembered: true,
  },
  'churchill-bernstein-1977': {
    citation:
      'Churchill, S. W. & Bernstein, M. (1977). A correlating equation for forced convection from gases and liquids to a circular cylinder in crossflow. Journal of Heat Transfer 99(2), 300–306.',
    year: 1977,
    remembered: true,
  },
  'chen-1985': {
    citation:
      'Chen, C. S. (1985). Thermodynamic analysis of the freezing and thawing of foods: enthalpy and apparent specific heat; ice content and mollier diagram. Journal of Food Science 50(4), 1158–1162 and 1163–1166.',
    year: 1985,
    remembered: true,
  },
  'schwartzberg-1976': {
    citation:
      'Schwartzberg, H. G. (1976). Effective heat capacities for the freezing and thawing of food. Journal of Food Science 41(1), 152–156.',
    year: 1976,
    remembered: true,
  },
  'schwartzberg-1981': {
    citation:
      'Schwartzberg, H. G. (1981). Mathematical analysis of the freezing and thawing of foods. Tutorial at the AIChE Summer Meeting, Detroit. As given in ASHRAE Handbook—Refrigeration, “Thermal Properties of Foods”.',
    year: 1981,
    remembered: true,
  },
  'miles-1974': {
    citation:
      'Miles, C. A. (1974). Ice fraction and bound water of food, as given with the thermal properties of foods in ASHRAE Handbook—Refrigeration.',
    year: 1974,
    remembered: true,
  },
  'tchigeov-1979': {
    citation:
      'Tchigeov, G. (1979). Thermophysical processes in food refrigeration technology. Food Industry, Moscow. As given in ASHRAE Handbook—Refrigeration, “Thermal Properties of Foods”.',
    year: 1979,
  },
  'plank-1913': {
    citation:
      'Plank, R. (1913). Die Gefrierdauer von Eisblöcken. Zeitschrift für die gesamte Kälte-Industrie 20(6), 109–114.',
    year: 1913,
    remembered: true,
  },
  'pham-1986': {
    citation:
      'Pham, Q. T. (1986). Simplified equation for predicting the freezing time of foodstuffs. Journal of Food Technology 21(2), 209–219.',
    year: 1986,
    remembered: true,
  },
  'pham-1996': {
    citation:
      'Pham, Q. T. (1996). Prediction of calorimetric properties and freezing time of foods from composition data. Journal of Food Engineering 30(1–2), 95–107. The abstract was read; the freezing point as later papers quote it.',
    year: 1996,
  },
  'ball-1923': {
    citation:
      'Ball, C. O. (1923). Thermal process time for canned food. Bulletin of the National Research Council 7(37). Washington, DC.',
    year: 1923,
    remembered: true,
  },
  'lacroix-castaigne-1987': {
    citation:
      'Lacroix, C. & Castaigne, F. (1987). Simple method for freezing time calculations for infinite flat slabs, infinite cylinders and spheres. Canadian Institute of Food Science and Technology Journal 20(4), 252–259.',
    year: 1987,
    remembered: true,
  },

  // Lethality.
  'bigelow-1921': {
    citation:
      'Bigelow, W. D. (1921). The logarithmic nature of thermal death time curves. Journal of Infectious Diseases 29(5), 528–536.',
    year: 1921,
    remembered: true,
  },

  // Cooking, cooling and keeping: rules, and the death of organisms.
  'fsa-cooking-safely': {
    citation:
      'Food Standards Agency. Cooking safely in your business; advice to caterers on cooking temperatures (70 °C for 2 minutes and its equivalents).',
  },
  'acmsf-burgers-2007': {
    citation:
      'Advisory Committee on the Microbiological Safety of Food, Ad Hoc Group on Safe Cooking of Burgers (2007). Report on the safe cooking of burgers. London.',
    year: 2007,
  },
  'cfa-chilled-foods-2006': {
    citation:
      'Chilled Food Association (2006). Best Practice Guidelines for the Production of Chilled Foods, 4th ed. TSO, London; table reproduced in the Food Standards Agency’s training on vacuum packing, module 3, section 2.',
    year: 2006,
  },
  'warne-1988': {
    citation:
      'Warne, D. (1988). Manual on fish canning. FAO Fisheries Technical Paper 285, FAO, Rome; the worked example of the trapezoidal method as reprinted, without its table of temperatures.',
    year: 1988,
  },
  'fernandez-peck-1997': {
    citation:
      'Fernández, P. S. & Peck, M. W. (1997). Predictive model describing the effect of prolonged heating at 70 to 80 °C and incubation at refrigeration temperatures on growth and toxigenesis by nonproteolytic Clostridium botulinum. Journal of Food Protection 60(9) (abstract).',
    year: 1997,
  },
  'fernandez-peck-1999': {
    citation:
      'Fernández, P. S. & Peck, M. W. (1999). A predictive model that describes the effect of prolonged heating at 70 to 90 °C and subsequent incubation at refrigeration temperatures on growth from spores and toxigenesis by nonproteolytic Clostridium botulinum in the presence of lysozyme. Applied and Environmental Microbiology 65(8), 3449–3457 (abstract).',
    year: 1999,
  },
  'fda-hazards-guide': {
    citation:
      'US Food and Drug Administration. Fish and Fishery Products Hazards and Controls Guidance, appendix 4, tables A-3 and A-4.',
  },
  'gb-chilling-guidance': {
    citation:
      'UK catering guidance on chilling cooked food to below 8 °C within 90 minutes: widely taught, no statutory source.',
  },
  'doh-cook-chill-1989': {
    citation:
      'Department of Health (1989). Chilled and Frozen: Guidelines on Cook-Chill and Cook-Freeze Catering Systems. HMSO, London.',
    year: 1989,
  },
  'food-hygiene-england-2013': {
    citation:
      'The Food Safety and Hygiene (England) Regulations 2013 (SI 2013/2996), schedule 4, and the corresponding regulations of Wales and Northern Ireland.',
    year: 2013,
  },
  'food-hygiene-scotland-2006': {
    citation: 'The Food Hygiene (Scotland) Regulations 2006 (SSI 2006/3), schedule 4, paragraphs 2 and 3.',
    year: 2006,
  },
  'fsis-appendix-a-2021': {
    citation:
      'US Department of Agriculture, Food Safety and Inspection Service (2021). FSIS Cooking Guideline for Meat and Poultry Products (Revised Appendix A), tables 2, 3, 4 and 6. December 2021.',
    year: 2021,
  },
  'fsis-appendix-b': {
    citation:
      'US Department of Agriculture, Food Safety and Inspection Service. Stabilization (cooling) guideline for meat and poultry products (Appendix B), 1999 text and 2021 revision.',
  },
  'us-food-code': {
    citation:
      'US Food and Drug Administration. Food Code, paragraphs 3-401.11, 3-403.11, 3-501.14 and 3-501.16, as reproduced in state codes.',
  },
  'us-food-code-keeping': {
    citation:
      'US Food and Drug Administration. Food Code, paragraphs 3-501.17 and 3-502.12(D), as reproduced in state codes.',
  },
  'eu-2073-2005': {
    citation:
      'Commission Regulation (EC) No 2073/2005 on microbiological criteria for foodstuffs, Annex I, chapter 1 (Listeria monocytogenes); as amended by Regulation (EU) 2024/2895.',
    year: 2005,
  },
  'eu-853-2004': {
    citation:
      'Regulation (EC) No 853/2004 laying down specific hygiene rules for food of animal origin, annexes I and III.',
    year: 2004,
  },
  'us-9cfr-318-10': {
    citation: 'US Code of Federal Regulations, title 9, section 318.10(c)(1) (former text, since removed).',
  },
  'doyle-schoeni-1984': {
    citation:
      'Doyle, M. P. & Schoeni, J. L. (1984). Survival and growth characteristics of Escherichia coli associated with hemorrhagic colitis. Applied and Environmental Microbiology 48, 855–856.',
    year: 1984,
    remembered: true,
  },
  'eu-2015-1375': {
    citation:
      'Commission Implementing Regulation (EU) 2015/1375, Annex II: freezing treatments against Trichinella.',
    year: 2015,
  },
  'barnaud-2012': {
    citation:
      'Barnaud, E., Rogée, S., Garry, P., Rose, N. & Pavio, N. (2012). Thermal inactivation of infectious hepatitis E virus in experimentally contaminated food. Applied and Environmental Microbiology 78, 5153–5159.',
    year: 2012,
    remembered: true,
  },
  'dubey-1990': {
    citation:
      'Dubey, J. P., Kotula, A. W., Sharar, A., Andrews, C. D. & Lindsay, D. S. (1990). Effect of high temperature on infectivity of Toxoplasma gondii tissue cysts in pork. Journal of Parasitology 76, 201–204; with Kotula, A. W. et al. (1991) on freezing, Journal of Food Protection 54, 687–690.',
    year: 1990,
    remembered: true,
  },
  'woah-avian-influenza': {
    citation:
      'World Organisation for Animal Health. Terrestrial Animal Health Code, chapter on infection with avian influenza viruses: inactivation in poultry meat.',
  },
  'mackey-bratchell-1989': {
    citation:
      'Mackey, B. M. & Bratchell, N. (1989). The heat resistance of Listeria monocytogenes. Letters in Applied Microbiology 9(3), 89–94.',
    year: 1989,
    remembered: true,
  },
  'juneja-marmer-1998': {
    citation:
      'Juneja, V. K. & Marmer, B. S. (1998). Thermal inactivation of Clostridium perfringens vegetative cells in ground beef and turkey as affected by sodium pyrophosphate. Food Microbiology 15(3), 281–287.',
    year: 1998,
    remembered: true,
  },
  'juneja-eblen-ransom-2001': {
    citation:
      'Juneja, V. K., Eblen, B. S. & Ransom, G. M. (2001). Thermal inactivation of Salmonella spp. in chicken broth, beef, pork, turkey, and chicken: determination of D- and z-values. Journal of Food Science 66(1), 146–152.',
    year: 2001,
  },
  'thermal-food-processing-7-1': {
    citation: 'Thermal Food Processing: New Technologies and Quality Issues, table 7.1. CRC Press.',
  },

  // The law of parts.
  'eu-1069-2009': {
    citation:
      'Regulation (EC) No 1069/2009 laying down health rules as regards animal by-products not intended for human consumption, Articles 8–10.',
    year: 2009,
  },
  'eu-999-2001': {
    citation:
      'Regulation (EC) No 999/2001 on transmissible spongiform encephalopathies, Article 8 and Annex V.',
    year: 2001,
  },
  'eu-2019-627': {
    citation: 'Regulation (EU) 2019/627 on official controls on products of animal origin, Article 45.',
    year: 2019,
  },
  'usda-retention-2007': {
    citation:
      'US Department of Agriculture, Agricultural Research Service (2007). USDA Table of Nutrient Retention Factors, Release 6, page 12: alcohol; read on pages that quote it.',
    year: 2007,
  },
  'eu-1169-2011': {
    citation: 'Regulation (EU) No 1169/2011 on food information to consumers, Annex VII Part B.',
    year: 2011,
  },
  'eu-1169-2011-labels': {
    citation:
      'Regulation (EU) No 1169/2011 on the provision of food information to consumers, Articles 9 and 17 to 24 and Annexes I, II, VI, VII, VIII, XIV and XV, which Great Britain keeps; read in summaries of it.',
    year: 2011,
  },
  'eu-tolerance-guidance-2012': {
    citation:
      'European Commission (December 2012). Guidance document with regard to the setting of tolerances for nutrient values declared on a label, section 6: rounding; read in a summary of it.',
    year: 2012,
  },
  'eu-quid-notice-2017': {
    citation:
      'Commission Notice on the application of the principle of quantitative ingredients declaration (QUID) (2017/C 393/05). OJ C 393, 21.11.2017, 5–12.',
    year: 2017,
  },
  'cfr-21-101-4': {
    citation: '21 CFR 101.4, Food; designation of ingredients (from memory).',
  },
  'fdca-201-qq': {
    citation:
      'Federal Food, Drug, and Cosmetic Act, sections 201(qq) and 403(w) (21 USC 321(qq), 343(w)), with the FASTER Act of 2021: major food allergens.',
    year: 2021,
  },
  'cfr-21-101-9': {
    citation:
      '21 CFR 101.9(c), Nutrition labeling of food: rounding and general factors; the rounding table as in FDA, Guide to Nutrition Labeling and Education Act Requirements, attachment 7.',
  },
  'fsa-manual-official-controls': {
    citation: 'Food Standards Agency, Manual for Official Controls, chapters 2.7, 2.8 and 2.12.',
  },
  'fss-farm-poultry': {
    citation:
      'Food Standards Scotland. Guidance on the slaughter of small quantities of poultry on the farm for direct supply.',
  },
  'eu-2018-969': {
    citation:
      'Commission Regulation (EU) 2018/969 amending Annex V to Regulation (EC) No 999/2001 as regards specified risk material of small ruminants (title and recitals read).',
    year: 2018,
  },
  'uk-si-2014-3001': {
    citation: 'The Products Containing Meat etc. (England) Regulations 2014 (SI 2014/3001), regulation 5.',
    year: 2014,
  },
  'eu-931-2011': {
    citation:
      'Commission Implementing Regulation (EU) No 931/2011 on traceability requirements for food of animal origin, Article 3.',
    year: 2011,
  },
  'fsa-lead-shot-game': {
    citation: 'Food Standards Agency. Advice to frequent eaters of game shot with lead (from memory).',
  },
  'nhs-vitamin-a-liver': {
    citation:
      'National Health Service. Advice on liver, liver products and vitamin A in pregnancy (from memory).',
  },
  'cfr-9-310': { citation: '9 CFR part 310, Post-mortem inspection (USDA FSIS).' },
  'cfr-9-318': {
    citation:
      '9 CFR part 318, Entry into official establishments; reinspection and preparation of products (USDA FSIS).',
  },
  'cfr-9-381': { citation: '9 CFR part 381, Poultry products inspection regulations (USDA FSIS).' },
  'fsis-6210-2': { citation: 'USDA FSIS Directive 6210.2, poultry feet.' },

  // Growth.
  'baranyi-roberts-1994': {
    citation:
      'Baranyi, J. & Roberts, T. A. (1994). A dynamic approach to predicting bacterial growth in food. International Journal of Food Microbiology 23(3–4), 277–294.',
    year: 1994,
    remembered: true,
  },
  'ratkowsky-1982': {
    citation:
      'Ratkowsky, D. A., Olley, J., McMeekin, T. A. & Ball, A. (1982). Relationship between temperature and growth rate of bacterial cultures. Journal of Bacteriology 149(1), 1–5.',
    year: 1982,
    remembered: true,
  },
  'ratkowsky-1983': {
    citation:
      'Ratkowsky, D. A., Lowry, R. K., McMeekin, T. A., Stokes, A. N. & Chandler, R. E. (1983). Model for bacterial culture growth rate throughout the entire biokinetic temperature range. Journal of Bacteriology 154(3), 1222–1226.',
    year: 1983,
    remembered: true,
  },
  'rosso-1993': {
    citation:
      'Rosso, L., Lobry, J. R. & Flandrois, J. P. (1993). An unexpected correlation between cardinal temperatures of microbial growth highlighted by a new model. Journal of Theoretical Biology 162(4), 447–463.',
    year: 1993,
    remembered: true,
  },
  'rosso-1995': {
    citation:
      'Rosso, L., Lobry, J. R., Bajard, S. & Flandrois, J. P. (1995). Convenient model to describe the combined effects of temperature and pH on microbial growth. Applied and Environmental Microbiology 61(2), 610–616.',
    year: 1995,
  },
  'rosso-robinson-2001': {
    citation:
      'Rosso, L. & Robinson, T. P. (2001). A cardinal model to describe the effect of water activity on the growth of moulds. International Journal of Food Microbiology 63(3), 265–273.',
    year: 2001,
    remembered: true,
  },
  'zwietering-1996': {
    citation:
      'Zwietering, M. H., de Wit, J. C. & Notermans, S. (1996). Application of predictive microbiology to estimate the number of Bacillus cereus in pasteurised milk at the point of consumption. International Journal of Food Microbiology 30(1–2), 55–70.',
    year: 1996,
    remembered: true,
  },
  'augustin-2005': {
    citation:
      'Augustin, J.-C., Zuliani, V., Cornu, M. & Guillier, L. (2005). Growth rate and growth probability of Listeria monocytogenes in dairy, meat and seafood products in suboptimal conditions. Journal of Applied Microbiology 99(5), 1019–1042.',
    year: 2005,
    remembered: true,
  },
  'fda-fsis-listeria-2003': {
    citation:
      'US Food and Drug Administration and USDA Food Safety and Inspection Service (2003). Quantitative assessment of relative risk to public health from foodborne Listeria monocytogenes among selected categories of ready-to-eat foods.',
    year: 2003,
  },
  'roasted-chicken-braised-beef-cooling': {
    citation:
      'Growth of Clostridium perfringens in roasted chicken and braised beef during cooling: one-step dynamic analysis and modeling. Food Control (abstract).',
  },
  'juneja-huang-thippareddi-2006': {
    citation:
      'Juneja, V. K., Huang, L. & Thippareddi, H. H. (2006). Predictive model for growth of Clostridium perfringens in cooked cured pork. International Journal of Food Microbiology 110(1), 85–92.',
    year: 2006,
    remembered: true,
  },
  'juneja-salmonella-chicken-2007': {
    citation:
      'Juneja, V. K., Valenzuela Melendres, M., Huang, L., Gumudavelli, V., Subbiah, J. & Thippareddi, H. (2007). Modeling the effect of temperature on growth of Salmonella in chicken. Food Microbiology 24(4), 328–335; equation as transcribed in a risk assessment of chicken (Korean Journal for Food Science of Animal Resources 38(5), 2018).',
    year: 2007,
  },
  'medvedova-2019': {
    citation:
      'Medveďová, A., Havlíková, A., Lehotová, V. & Valík, Ľ. (2019). Staphylococcus aureus 2064 growth as affected by temperature and reduced water activity. Italian Journal of Food Safety 8(4), 8287 (abstract).',
    year: 2019,
    doi: '10.4081/ijfs.2019.8287',
  },
  'icmsf-1996': {
    citation:
      'International Commission on Microbiological Specifications for Foods (1996). Microorganisms in Foods 5: Characteristics of Microbial Pathogens. Blackie Academic & Professional, London; growth limits as tabulated by the US Department of Agriculture.',
    year: 1996,
  },
  'fda-hazards-guide-growth': {
    citation:
      'US Food and Drug Administration. Fish and Fishery Products Hazards and Controls Guidance, appendix 4, table A-1: limiting conditions for pathogen growth.',
  },
  'olds-2006': {
    citation:
      'Olds, D. A. et al. (2006). Cooling of cooked turkey roasts and growth of Clostridium perfringens. Journal of Food Protection 69(1) (abstract).',
    year: 2006,
  },
  'juneja-cured-beef-cooling': {
    citation:
      'Juneja, V. K., Novak, J. S., Marks, H. M. & Gombas, D. E. (2001). Growth of Clostridium perfringens from spore inocula in cooked cured beef: development of a predictive model. Innovative Food Science and Emerging Technologies 2(4), 289–301 (abstract).',
    year: 2001,
    remembered: true,
  },
  // Spread of results, and what heat does to meat besides making it safe.
  'joe-kuo-2008': {
    citation:
      'Joe, S. & Kuo, F. Y. (2008). Constructing Sobol sequences with better two-dimensional projections. SIAM Journal on Scientific Computing 30(5), 2635–2654; direction numbers new-joe-kuo-6.21201.',
    year: 2008,
    doi: '10.1137/070709359',
  },
  'burley-2020': {
    citation:
      'Burley, B. (2020). Practical hash-based Owen scrambling. Journal of Computer Graphics Techniques 9(4), 1–20.',
    year: 2020,
    remembered: true,
  },
  'blackman-vigna-2021': {
    citation:
      'Blackman, D. & Vigna, S. (2021). Scrambled linear pseudorandom number generators. ACM Transactions on Mathematical Software 47(4), 36.',
    year: 2021,
    remembered: true,
  },
  'wichura-1988': {
    citation:
      'Wichura, M. J. (1988). Algorithm AS 241: the percentage points of the normal distribution. Applied Statistics 37(3), 477–484.',
    year: 1988,
    remembered: true,
  },
  'golub-van-loan': {
    citation: 'Golub, G. H. & Van Loan, C. F. Matrix Computations. Johns Hopkins University Press.',
  },
  'sudret-2008': {
    citation:
      'Sudret, B. (2008). Global sensitivity analysis using polynomial chaos expansions. Reliability Engineering and System Safety 93(7), 964–979.',
    year: 2008,
    remembered: true,
  },

  // Statistics of shares.
  'aitchison-1986': {
    citation:
      'Aitchison, J. (1986). The Statistical Analysis of Compositional Data. Chapman and Hall, London.',
    year: 1986,
  },
  'egozcue-2003': {
    citation:
      'Egozcue, J. J., Pawlowsky-Glahn, V., Mateu-Figueras, G. & Barceló-Vidal, C. (2003). Isometric logratio transformations for compositional data analysis. Mathematical Geology 35(3), 279–300.',
    year: 2003,
    remembered: true,
  },
  'martin-fernandez-2003': {
    citation:
      'Martín-Fernández, J. A., Barceló-Vidal, C. & Pawlowsky-Glahn, V. (2003). Dealing with zeros and missing values in compositional data sets using nonparametric imputation. Mathematical Geology 35(3), 253–278.',
    year: 2003,
    remembered: true,
  },
  'gelman-bda-2013': {
    citation:
      'Gelman, A., Carlin, J. B., Stern, H. S., Dunson, D. B., Vehtari, A. & Rubin, D. B. (2013). Bayesian Data Analysis, 3rd edition, section 3.3 (normal data with a conjugate prior). CRC Press, Boca Raton.',
    year: 2013,
    remembered: true,
  },
  'iglewicz-hoaglin-1993': {
    citation:
      'Iglewicz, B. & Hoaglin, D. C. (1993). How to Detect and Handle Outliers. ASQC Quality Press, Milwaukee (modified z-score, limit 3.5).',
    year: 1993,
    remembered: true,
  },
  'wright-1936': {
    citation:
      'Wright, T. P. (1936). Factors affecting the cost of airplanes. Journal of the Aeronautical Sciences 3(4), 122–128.',
    year: 1936,
    remembered: true,
  },
  'welch-1947': {
    citation:
      'Welch, B. L. (1947). The generalization of “Student’s” problem when several different population variances are involved. Biometrika 34(1–2), 28–35.',
    year: 1947,
    remembered: true,
  },

  // What animals yield, and a proxy of what their parts stand for.
  'usda-sr28-2015': {
    citation:
      'US Department of Agriculture, Agricultural Research Service, Nutrient Data Laboratory. USDA National Nutrient Database for Standard Reference, Release 28 (September 2015): refuse and unit-weight records.',
    year: 2015,
  },
  'usda-sr28': {
    citation:
      'US Department of Agriculture, Agricultural Research Service, Nutrient Data Laboratory. USDA National Nutrient Database for Standard Reference, Release 28 (September 2015): composition, energy, refuse and household weights, by the number of the food; read in a copy. US public domain.',
    year: 2015,
  },
  'usda-cooking-yields-2014': {
    citation:
      'US Department of Agriculture, Agricultural Research Service, Nutrient Data Laboratory (2014). USDA Table of Cooking Yields for Meat and Poultry, Release 2. Table 1; a selection of it, read in a copy.',
    year: 2014,
  },
  'ahdb-pork-yield-guide': {
    citation:
      'Agriculture and Horticulture Development Board. Pork yield guide (undated brochure; one pig of 111.5 kg).',
  },
  'ahdb-lamb-yield-guide': {
    citation:
      'Agriculture and Horticulture Development Board. Lamb yield guide (brochure; one lamb of 40.05 kg).',
  },
  'ahdb-beef-yield-guide': {
    citation:
      'Agriculture and Horticulture Development Board. Beef yield guide (brochure; one steer of 600 kg).',
  },
  'kempster-lamb-survey': {
    citation: 'Kempster, A. J. et al. Survey of British lamb carcasses, 1971/72 (abstract).',
  },
  'npb-2016-cutout': {
    citation:
      'National Pork Board (2016). Pork cut-out from cutting tests: a 283 lb pig with a carcass of 214 lb.',
    year: 2016,
  },
  'us-plant-hog-brochure': {
    citation: 'Leaflet of a small US meat plant on the weights from a pig of 250 lb (180 lb dressed).',
  },
  'spent-laying-hens-abstract': {
    citation:
      'Effects of production systems on the carcass and meat quality characteristics of spent laying hens (abstract).',
  },
  'fies-2020-turkey': {
    citation: 'BIO Web of Conferences (FIES 2020), article 00259, table 2, control group.',
    year: 2020,
  },
  'trop-agric-guinea-fowl': {
    citation: 'Carcass of the grey-breasted helmet guinea fowl. Tropical Agriculture 60(3) (abstract).',
  },
  'rosca-usturoi-guinea-fowl': {
    citation: 'Roșca & Usturoi. Carcass of grey guinea fowl. Scientific papers, Iași, vol. 69 (abstract).',
  },
  'genes-2024-pekin': { citation: 'Genes 15 (2024), 1553, table 1 (PMC11675992).', year: 2024 },
  'j-poultry-sci-2018-ducks': {
    citation: 'Journal of Poultry Science 55 (2018), 182–189, table 3, control group (PMC6756497).',
    year: 2018,
  },
  'small-meat-ducks-2023': {
    citation: 'Residual feed intake of small-sized meat ducks (2023), table 4, middle group (PMC10404786).',
    year: 2023,
  },
  'muscovy-2008': {
    citation: 'Tropical Animal Health and Production 40 (2008), 5–10 (abstract).',
    year: 2008,
  },
  'geese-india-2013': {
    citation: 'Slaughter and carcass characteristics of adult local geese, India (2013; abstract).',
    year: 2013,
  },
  'geese-assam-2020': {
    citation:
      'International Journal of Current Microbiology and Applied Sciences 9(12) (2020), article 416 (abstract).',
    year: 2020,
  },
  'kars-native-geese': {
    citation: 'Turkish Journal of Veterinary and Animal Sciences: native geese of Kars (abstract).',
  },
  'poultry-science-2023-xingguo': {
    citation: 'Poultry Science 102 (2023), 102753, table 3 (PMC10244692).',
    year: 2023,
  },
  'guner-geese': {
    citation: 'Güner et al. Turkish domestic geese. Eurasian Journal of Veterinary Sciences (abstract).',
  },
  'kuzelov-2011-rabbit': {
    citation: 'Kuzelov & Atanasova (2011). Agricultural Sciences (abstract).',
    year: 2011,
    doi: '10.22620/agrisci.2011.05.009',
  },
  'fitzhenry-2019-fallow': {
    citation: 'Fitzhenry et al. (2019). African Journal of Wildlife Research 49, 100–110 (abstract).',
    year: 2019,
  },
  'fao-conversion-factors': {
    citation:
      'Food and Agriculture Organization, Coordinating Working Party. Handbook of Fishery Statistical Standards: conversion factors to live weight.',
  },
  'agribalyse-3-1': {
    citation:
      'ADEME and INRAE. AGRIBALYSE 3.1, synthesis by product (climate change, EF 3.1), kg CO2e per kg.',
  },
  'van-der-sman-2007': {
    citation:
      'van der Sman, R. G. M. (2007). Moisture transport during cooking of meat: an analysis based on Flory–Rehner theory. Meat Science 76(4), 730–738; constants as used by Feyissa et al. (2009).',
    year: 2007,
    remembered: true,
  },
  'feyissa-2009': {
    citation:
      'Feyissa, A. H., Adler-Nissen, J. & Gernaey, K. V. (2009). Model of heat and mass transfer with moving boundary during roasting of meat in convection-oven. Proceedings of the COMSOL Conference, Milan.',
    year: 2009,
    remembered: true,
  },
  'bae-2018': {
    citation:
      'Bae, S. M. et al. (2018), on ground chicken breast by salt and end temperature. Korean Journal for Food Science of Animal Resources 38, 417, table 8.',
    year: 2018,
  },
  'geileskey-1998': {
    citation:
      'Geileskey, A., King, R. D., Corte, D., Pinto, P. & Ledward, D. A. (1998). The kinetics of cooked meat haemoprotein formation in meat and model systems. Meat Science 48(3–4), 189–199.',
    year: 1998,
    remembered: true,
  },
  'palka-wesierska-2014': {
    citation:
      'Palka, K. & Wesierska, E. (2014). Effects on physicochemical and nutritional changes during cooking. In: Encyclopedia of Meat Sciences, 2nd edition; with Martens, H., Stabursvik, E. & Martens, M. (1982) for actin in a slow cook.',
    year: 2014,
    remembered: true,
  },

  // Tasting.
  'iso-4120-2021': {
    citation: 'ISO 4120:2021. Sensory analysis. Methodology. Triangle test.',
    year: 2021,
    remembered: true,
  },
  'iso-10399-table-a1': {
    citation:
      'GOST ISO 10399-2015. Sensory analysis. Methodology. Duo-trio test. Table A.1: minimum number of correct answers.',
    year: 2015,
  },
  'huss-1995': {
    citation:
      'Huss, H. H. (ed.) (1995). Quality and quality changes in fresh fish. FAO Fisheries Technical Paper 348, Rome. Appendix A: triangle test, correct answers needed.',
    year: 1995,
    url: 'https://www.fao.org/4/v7180e/V7180E0j.htm',
  },
  'iso-8587-2006': {
    citation: 'ISO 8587:2006. Sensory analysis. Methodology. Ranking.',
    year: 2006,
    remembered: true,
  },
  'friedman-1937': {
    citation:
      'Friedman, M. (1937). The use of ranks to avoid the assumption of normality implicit in the analysis of variance. Journal of the American Statistical Association 32(200), 675–701.',
    year: 1937,
    remembered: true,
  },
  'page-1963': {
    citation:
      'Page, E. B. (1963). Ordered hypotheses for multiple treatments: a significance test for linear ranks. Journal of the American Statistical Association 58(301), 216–230.',
    year: 1963,
    remembered: true,
  },
  'clopper-pearson-1934': {
    citation:
      'Clopper, C. J. & Pearson, E. S. (1934). The use of confidence or fiducial limits illustrated in the case of the binomial. Biometrika 26(4), 404–413.',
    year: 1934,
    remembered: true,
  },
  'ennis-1993': {
    citation:
      'Ennis, D. M. (1993). The power of sensory discrimination methods. Journal of Sensory Studies 8(4), 353–370.',
    year: 1993,
    remembered: true,
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
  return source.remembered === true
    ? `${source.citation} (Volume and pages as remembered.)`
    : source.citation;
}
