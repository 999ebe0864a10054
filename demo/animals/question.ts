/** What the demo kitchen asked the authority, and has no answer to. All invented. */
import type { DemoQuestion } from '../../src/app/demo-animals-shape.ts';
import { wren } from './names.ts';

export const gooseHeadQuestion: DemoQuestion = {
  by: wren,
  at: { daysAgo: 20, clock: '10:40' },
  dish: 'Goose head, split and grilled',
  species: 'goose',
  part: 'head',
  content: {
    versionNumber: 1,
    supplier: 'Marsh Cote Geese (invented), six geese a week, heads on',
    specification:
      'Dry plucked and singed, head on, bled by a small cut close under the head. Beak and eyes would come off at the plant.',
    process: [
      'Split, washed in cold water, tongue and cheeks left in',
      'Simmered until the coldest point is safe, chilled',
      'Grilled to order, 75 °C at the core',
    ],
    predicted: ['Not predicted yet: no body has been measured.'],
    measured: ['Nothing measured: no head has been cooked.'],
    laboratory: '',
    question:
      'May goose heads from this plant be placed on the market as food when this is meant from the start and the heads pass inspection, and what must the plant and we do for it?',
  },
};
