import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { operations } from '../contract/operations.ts';
import { fillPath } from './api-path.ts';

describe('fillPath', () => {
  it('fills every part and appends the query, leaving out what is not given', () => {
    expect(fillPath('/api/kitchens/:kitchenId/dishes/:dishId', { kitchenId: 'k', dishId: 'd' })).toBe(
      '/api/kitchens/k/dishes/d',
    );
    expect(fillPath('/api/x', {}, { before: 3, limit: undefined })).toBe('/api/x?before=3');
  });

  it('refuses a missing or empty part instead of asking for another address', () => {
    expect(() => fillPath('/api/kitchens/:kitchenId/dishes', {})).toThrow('no kitchenId given');
    expect(() => fillPath('/api/kitchens/:kitchenId/dishes', { kitchenId: '' })).toThrow(TypeError);
  });

  it('keeps any value inside its own part of the address', () => {
    fc.assert(
      fc.property(fc.string({ minLength: 1 }), (value) => {
        fc.pre(!/[\ud800-\udfff]/.test(value));
        const url = new URL(
          fillPath('/api/kitchens/:kitchenId/dishes', { kitchenId: `x${value}` }),
          'http://h',
        );
        expect(url.pathname.split('/')).toHaveLength(5);
        expect(decodeURIComponent(url.pathname.split('/')[3] ?? '')).toBe(`x${value}`);
      }),
    );
  });

  it('leaves no part unfilled in any path of the contract', () => {
    for (const { path } of Object.values(operations)) {
      const params = Object.fromEntries([...path.matchAll(/:(\w+)/g)].map((m) => [m[1] ?? '', 'id']));
      expect(fillPath(path, params)).not.toContain(':');
    }
  });
});
