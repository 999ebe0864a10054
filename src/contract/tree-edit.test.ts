import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { startingTrees } from '../core/properties/breakdown-trees.ts';
import { BreakdownTree, type TreeNode } from './breakdown.ts';
import {
  addPlace,
  animalOf,
  asSaidToday,
  branchOf,
  changePlace,
  classOf,
  lawful,
  movePlace,
  removePlace,
  renamePlace,
  shiftPlace,
  startingNodes,
  stoppedByLaw,
} from './tree-edit.ts';

/** What the server asks of a tree, in short. */
function sound(nodes: readonly TreeNode[]): void {
  BreakdownTree.shape.nodes.parse(nodes);
  expect(new Set(nodes.map((n) => n.id)).size).toBe(nodes.length);
  expect(nodes.filter((n) => n.parent === null)).toHaveLength(1);
  for (const n of nodes) {
    const cut = nodes.some((m) => m.parent === n.id);
    if (cut) expect(n.becomes, n.name).toBe('step');
    else if (n.parent !== null) expect(n.becomes, n.name).not.toBe('step');
    if (n.parent !== null) expect(nodes.findIndex((m) => m.id === n.parent)).toBeLessThan(nodes.indexOf(n));
  }
}

describe('startingNodes', () => {
  it.each(startingTrees.map((t) => t.species))('%s is a tree that the server takes', (species) => {
    sound(startingNodes(species));
  });
  it('an animal that nobody published begins with what the kitchen names', () => {
    const nodes = startingNodes('hare', [{ species: 'hare', name: 'saddle', use: 'menu', class: null }]);
    sound(nodes);
    expect(nodes.map((n) => n.name)).toEqual(['hare', 'saddle']);
  });
  it('what the kitchen says of a part comes first', () => {
    const nodes = startingNodes('geese', [
      { species: 'geese', name: 'Feet', use: 'kitchen', class: 'poultry' },
    ]);
    expect(nodes.find((n) => n.id === 'feet')).toMatchObject({ use: 'kitchen', class: 'poultry' });
    expect(animalOf('Geese')).toBe('goose');
  });
});

describe('asSaidToday', () => {
  it('what the kitchen has changed its mind about since is so in a kept tree, and nothing else', () => {
    const kept = startingNodes('goose');
    const now = asSaidToday(kept, 'goose', [
      { species: 'Goose', name: 'Wings', use: 'thrown away', class: null },
    ]);
    expect(now.find((n) => n.id === 'wings')).toMatchObject({ use: 'thrown away', class: 'poultry' });
    expect(now.filter((n) => n.id !== 'wings')).toEqual(kept.filter((n) => n.id !== 'wings'));
  });
});

describe('lawful', () => {
  it('the head of a goose is a by-product in GB, with its citation', () => {
    const nodes = lawful(startingNodes('goose'), 'goose', 'GB-ENG');
    expect(nodes.find((n) => n.id === 'head')).toMatchObject({ becomes: 'by-product', use: 'thrown away' });
    const stop = stoppedByLaw(nodes, 'goose', 'GB-ENG').get('head');
    expect(stop?.never).toBe(false);
    expect(stop?.law.citation).toMatch(/853\/2004|1069\/2009/);
  });
  it('never leaves a prohibited part as food, in any tree and place', () => {
    for (const { species } of startingTrees)
      for (const place of ['GB-ENG', 'GB-NIR', 'EU', 'US'] as const) {
        const nodes = lawful(startingNodes(species), species, place);
        sound(nodes);
        for (const id of stoppedByLaw(nodes, species, place).keys())
          expect(nodes.find((n) => n.id === id)?.becomes).not.toMatch(/^(part|sold)$/);
      }
  });
});

describe('lawful by age', () => {
  const cord = (ageMonths: number | null) => {
    const nodes = lawful(
      addPlace(startingNodes('lamb'), 'lamb', 'carcass', 'spinal cord'),
      'lamb',
      'GB-ENG',
      { ageMonths },
    );
    return nodes.find((n) => n.name === 'spinal cord')?.becomes;
  };
  it('specified risk material of an animal over its limit, or of an age that nobody shows, is no part', () => {
    expect(cord(6)).toBe('part');
    expect(cord(14)).toBe('by-product');
    expect(cord(null)).toBe('by-product');
  });
});

describe('changing a tree', () => {
  const goose = startingNodes('goose');
  it('any row of changes leaves a tree that holds together', () => {
    const step = fc.record({
      what: fc.constantFrom('add', 'remove', 'rename', 'move', 'shift', 'becomes'),
      a: fc.nat(),
      b: fc.nat(),
      name: fc.string({ maxLength: 60 }),
    });
    fc.assert(
      fc.property(fc.array(step, { maxLength: 25 }), (steps) => {
        let nodes = goose;
        for (const { what, a, b, name } of steps) {
          const id = nodes[a % nodes.length]!.id;
          const other = nodes[b % nodes.length]!.id;
          if (what === 'add' && name.trim() !== '') nodes = addPlace(nodes, 'goose', id, name);
          if (what === 'remove') nodes = removePlace(nodes, id);
          if (what === 'rename') nodes = renamePlace(nodes, id, name);
          if (what === 'move') nodes = movePlace(nodes, id, other);
          if (what === 'shift') nodes = shiftPlace(nodes, id, b % 2 === 0 ? 1 : -1);
          if (what === 'becomes' && nodes[a % nodes.length]!.parent !== null)
            nodes = changePlace(nodes, id, { becomes: b % 2 === 0 ? 'bin' : 'sold' });
        }
        sound(nodes);
      }),
    );
  });
  it('a piece that is cut on becomes a step, and a part again when nothing is left below it', () => {
    const cut = addPlace(goose, 'goose', 'wings', 'wing tips');
    expect(cut.find((n) => n.id === 'wings')?.becomes).toBe('step');
    expect(removePlace(cut, 'wing tips').find((n) => n.id === 'wings')?.becomes).toBe('part');
  });
  it('never comes from what is cut of it', () => {
    expect(movePlace(goose, 'neck', 'neck skin')).toEqual(goose);
    expect(branchOf(goose, 'neck')).toEqual(new Set(['neck', 'neck skin', 'neck meat', 'neck bone']));
  });
});

describe('classOf', () => {
  it.each([
    ['goose', 'liver', 'offal'],
    ['goose', 'breast', 'poultry'],
    ['pig', 'blood', 'blood'],
    ['pig', 'back fat', 'fat and bone'],
    ['sheep', 'shoulder', 'red meat'],
    ['cod', 'head', 'fish'],
    ['rabbit', 'saddle', 'rabbit'],
    ['yak', 'saddle', null],
  ])('%s, %s: %s', (species, part, limits) => expect(classOf(species, part)).toBe(limits));
});
