import type { DemoDish } from '../../src/app/demo-shape.ts';

export const gooseHead: DemoDish = {
  name: 'Goose head, split and grilled',
  species: 'goose',
  part: 'head',
  story:
    'Tongue, cheek and a little skin, with pepper and vinegar. Stays an idea until the authority has answered: a poultry head is a by-product unless it was taken for food from the start.',
  versions: [
    { by: 'Wren Aldous', at: { daysAgo: 29, clock: '22:15' }, reason: 'An idea after service.', method: [] },
  ],
};
