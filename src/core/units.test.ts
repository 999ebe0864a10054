import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatQuantity, inUnit, parseQuantity, type QuantityKind, toBase, usualUnit } from './units.ts';

const value = (text: string, kind: QuantityKind, assumed?: string) => {
  const parsed = parseQuantity(text, kind, assumed);
  return parsed.ok ? parsed.value : parsed.message;
};

describe('parseQuantity', () => {
  it('takes units as they are typed', () => {
    expect(value('1.2kg', 'mass')).toBeCloseTo(1200, 9);
    expect(value('2 lb 3 oz', 'mass')).toBeCloseTo(992.2333, 3);
    expect(value('165F', 'temperature')).toBeCloseTo(73.8889, 4);
    expect(value('165 °F', 'temperature')).toBeCloseTo(73.8889, 4);
    expect(value('-18', 'temperature')).toBe(-18);
    expect(value('5 1/2 in', 'length')).toBeCloseTo(139.7, 9);
    expect(value('5½"', 'length')).toBeCloseTo(139.7, 9);
    expect(value('1 h 30', 'time')).toBe(90);
    expect(value('90 s', 'time')).toBeCloseTo(1.5, 12);
    expect(value('2 d', 'time')).toBe(2880);
    expect(value('1.8 %', 'share')).toBe(1.8);
  });

  it('reckons', () => {
    expect(value('3*420g', 'mass')).toBe(1260);
    expect(value('3x420g', 'mass')).toBe(1260);
    expect(value('3 x 420', 'mass')).toBe(1260);
    expect(value('(2.4kg-180g)/6', 'mass')).toBeCloseTo(370, 9);
    expect(value('1kg + 250g', 'mass')).toBe(1_250);
    expect(value('1kg + 250', 'mass')).toContain('write both');
    expect(value('2+3*4', 'number')).toBe(14);
    expect(value('--4', 'number')).toBe(4);
  });

  it('reads a decimal comma, and refuses what could be two numbers', () => {
    expect(value('1,5kg', 'mass')).toBe(1500);
    expect(value('0,125 kg', 'mass')).toBeCloseTo(125, 9);
    expect(value('1,200', 'mass')).toContain('could be 1.200 or 1200');
    expect(value('1,234,567 g', 'mass')).toBe(1_234_567);
    expect(value('1.2.3', 'mass')).toContain('not a number');
  });

  it('says what is wrong and what to write', () => {
    expect(value('', 'mass')).toBe('nothing was typed');
    expect(value('12 °C', 'mass')).toContain('is not a unit of weight');
    expect(value('4 C + 3 F', 'temperature')).toContain('one number');
    expect(value('1:30', 'time')).toContain('1 h 30');
    expect(value('3 * ', 'mass')).toContain('missing');
    expect(value('(3', 'mass')).toContain('bracket');
    expect(value('4/0', 'number')).toContain('zero');
    expect(value('2 3', 'number')).toContain('side by side');
    expect(value('2g*3g', 'mass')).toContain('cannot be multiplied');
    expect(value('9'.repeat(199), 'number')).toBe(Number('9'.repeat(199)));
    expect(value('alert(1)', 'number')).toContain('not a number');
  });

  it('assumes the shown unit for a bare number', () => {
    expect(value('4', 'mass', 'oz')).toBeCloseTo(113.398, 3);
    expect(value('160', 'temperature', '°F')).toBeCloseTo(71.111, 3);
  });

  it('never throws, whatever is typed', () => {
    fc.assert(
      fc.property(
        fc.string(),
        fc.constantFrom<QuantityKind>('mass', 'length', 'temperature', 'time', 'share', 'number'),
        (text, kind) => {
          const parsed = parseQuantity(text, kind);
          if (parsed.ok) expect(Number.isFinite(parsed.value)).toBe(true);
          else expect(parsed.message).not.toBe('');
        },
      ),
    );
  });

  it('reads back what a field shows', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -50, max: 5000, noNaN: true }),
        fc.constantFrom<QuantityKind>('mass', 'length', 'temperature', 'time'),
        fc.constantFrom<'metric' | 'US'>('metric', 'US'),
        (v, kind, system) => {
          const unit = usualUnit(kind, system);
          const parsed = parseQuantity(`${inUnit(v, kind, unit).toFixed(6)} ${unit}`, kind, unit);
          expect(parsed.ok && Math.abs(parsed.value - v) < 1e-3).toBe(true);
          expect(toBase(inUnit(v, kind, unit), kind, unit)).toBeCloseTo(v, 8);
        },
      ),
    );
  });
});

describe('formatQuantity', () => {
  it('shows a sensible number of figures in the kitchen’s units', () => {
    expect(formatQuantity(1350, 'mass', 'metric')).toBe('1.35 kg');
    expect(formatQuantity(420, 'mass', 'metric')).toBe('420 g');
    expect(formatQuantity(7.26, 'mass', 'metric')).toBe('7.3 g');
    expect(formatQuantity(453.59237, 'mass', 'US')).toBe('1 lb');
    expect(formatQuantity(71.3982, 'temperature', 'metric')).toBe('71.4 °C');
    expect(formatQuantity(73.8889, 'temperature', 'US')).toBe('165 °F');
    expect(formatQuantity(-0.01, 'temperature', 'metric')).toBe('0 °C');
    expect(formatQuantity(170, 'length', 'US')).toBe('6.69 in');
    expect(formatQuantity(35, 'time', 'metric')).toBe('35 min');
    expect(formatQuantity(150, 'time', 'metric')).toBe('2 h 30 min');
    expect(formatQuantity(0.5, 'time', 'metric')).toBe('30 s');
    expect(formatQuantity(4320, 'time', 'metric')).toBe('3 days');
    expect(formatQuantity(Number.NaN, 'mass', 'metric')).toBe('—');
  });
});
