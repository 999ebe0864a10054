/** What is said with every signature, whatever the method is. */
export const standing: readonly string[] = [
  'A computed temperature is no measurement: the probe in the batch decides.',
  'The time holds for a piece no thicker, no colder and no more crowded than drawn.',
  'Rules and law are reported as their sources have them; the word of your local authority and of qualified people stands above this.',
];
