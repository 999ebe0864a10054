import { describe, expect, test } from 'vitest';
import { demoKitchen } from '../../demo/kitchen.ts';
import { cardOf, demoCard, layMethod, nextId, recordOf } from '../../test/paper/lay.ts';
import { readPdf } from '../../test/paper/read-pdf.ts';
import { standing } from '../contract/standing.ts';
import type { Ask, Method } from '../contract/steps.ts';
import type { MethodCardData } from '../documents/method-card-data.ts';
import { batchRecordPdf, DoesNotFit, methodCardPdf } from './typeset.ts';

const trotter = 'Stuffed trotter, chestnut and juniper';
const deference = 'have the last word';

/** Text as long as its field may be, of words that break. */
const long = (length: number, word = 'juniper'): string => {
  let text = '';
  while (text.length < length) text += text === '' ? word : ` ${word}`;
  return text.slice(0, length).trim().padEnd(length, 'x');
};

const ask = (kind: Ask['kind'], critical: boolean): Ask => ({
  id: nextId(),
  kind,
  label: long(120, 'between'),
  low: 1,
  high: 3,
  critical,
  basis: long(300, 'practice'),
});

/** The demo's trotter with every name and label as long as it may be, fourteen steps, and longer instructions. */
function stressed(howLength: number, asks: Ask[]): Method {
  const method = layMethod(demoKitchen.dishes[0]!.versions[1]!.method);
  const more = layMethod(demoKitchen.dishes[1]!.versions[0]!.method).filter(
    (s) => s.kind !== 'cook' && s.kind !== 'chill',
  );
  return [...method, ...more].map((step) => ({
    ...step,
    name: long(120, 'stocking'),
    how: long(howLength, 'slowly'),
    asks: [
      ...step.asks.map((a) => ({ ...a, label: long(120, 'arrival') })),
      ...asks.map((a) => ({ ...a, id: nextId() })),
    ],
  }));
}

describe('methodCardPdf', () => {
  for (const dish of demoKitchen.dishes) {
    test(`one A4 page: ${dish.name}`, async () => {
      const card = readPdf(await methodCardPdf(demoCard(dish.name)));
      expect(card.pages).toBe(1);
      expect(card.size[0]).toBeCloseTo(210, 0);
      expect(card.size[1]).toBeCloseTo(297, 0);
      expect(card.text).toContain('Invented data: demo kitchen');
      expect(card.text).toContain(deference);
      expect(card.text).toContain('Printed 25 Nov 2026, 10:30');
      for (const step of dish.versions.at(-1)!.method) expect(card.text).toContain(step.name);
    });
  }

  test('says what is done, at what, within which limits, by whose signature', async () => {
    const { text, fonts } = readPdf(await methodCardPdf(demoCard(trotter)));
    const plain = text.replaceAll('\u00a0', ' ');
    expect(plain).toContain('Signed by Wren Aldous, 5 Nov 2026, 09:45');
    expect(plain).toContain('steam 100 °C, 37 min');
    expect(plain).toContain('980 g');
    expect(plain).toContain('Trotters on arrival, between two of them: at most 3 °C');
    expect(plain).toContain('Reckoned to hold');
    expect(plain).not.toContain('NOT SIGNED');
    // Nothing but the fonts of the package, and every glyph found in them.
    for (const font of fonts) expect(font).toMatch(/SourceSans3|Literata/);
    expect(plain).not.toContain('\ufffd');
  });

  test('a draft says so, in the head and across the page', async () => {
    const { text } = readPdf(
      await methodCardPdf({
        ...demoCard(trotter),
        ...cardOf(demoKitchen.dishes[0]!, layMethod(demoKitchen.dishes[0]!.versions[1]!.method), null),
      }),
    );
    expect(text.match(/DRAFT — NOT SIGNED/g)?.length).toBeGreaterThanOrEqual(1);
    expect(text).not.toContain('Signed by');
  });

  test('a piece that does not hold, or was not run, is never shown as fine', async () => {
    const data = demoCard(trotter);
    const short: Method = data.version.method.map((step) =>
      step.kind === 'cook'
        ? { ...step, stages: step.stages.map((s) => ({ ...s, until: { min: 12 } })) }
        : step,
    );
    const card = readPdf(await methodCardPdf(cardOf(demoKitchen.dishes[0]!, short))).text;
    expect(card).toContain('Does not hold');
    expect(card).not.toContain('Reckoned to hold');
    const notRun: MethodCardData = {
      ...data,
      cooks: data.cooks.map((c) => ({ stepId: c.stepId, why: 'No composition for the skin.' })),
    };
    const unknown = readPdf(await methodCardPdf(notRun)).text;
    expect(unknown).toContain('Unknown. No composition for the skin. Not to be served as it stands.');
    expect(unknown).not.toContain('Reckoned to hold');
    expect(readPdf(await methodCardPdf({ ...data, cooks: [] })).text).toContain('Unknown');
  });

  test('a sum below the rule’s lowest temperature, and a target of the kitchen’s own, never pass for the rule', async () => {
    const data = demoCard(trotter);
    const cooked = (stages: object[], more: object): Method =>
      data.version.method.map((step) =>
        step.kind === 'cook' ? ({ ...step, stages, ...more } as Method[number]) : step,
      );
    const bath = (mediumC: number, min: number) => [{ name: 'bath', mediumC, hWm2K: 1000, until: { min } }];
    const paper = async (method: Method) =>
      readPdf(await methodCardPdf(cardOf(demoKitchen.dishes[0]!, method))).text.replaceAll('\u00a0', ' ');
    const cold = await paper(cooked(bath(59.5, 600), {}));
    expect(cold).toContain('Does not meet its rule');
    expect(cold).not.toMatch(/Reckoned (only just )?to hold/);
    const own = await paper(cooked(bath(90, 90), { target: { referenceC: 50, zC: 50, min: 1 } }));
    expect(own.replaceAll(/\s+/g, ' ')).toContain('kitchen’s own, and less than 70 °C for 2 min');
  });

  test('what was told with the signature is on the card, however much it is', async () => {
    const data = demoCard(trotter);
    const told = ['"Keep" allows 12 °C.', ...Array.from({ length: 5 }, (_, i) => long(200, `caution${i}`))];
    const evidence = { engine: 'e', verdicts: [], cautions: [...standing, ...told] };
    const card = readPdf(await methodCardPdf({ ...data, version: { ...data.version, evidence } }));
    expect(card.pages).toBe(1);
    expect(card.text).toContain('▲ "Keep" allows 12 °C.');
    for (const i of [0, 4]) expect(card.text).toContain(`caution${i}`);
    expect(card.text).not.toContain(standing[0]);
  });

  test('a dish the law stops says so', async () => {
    const data = demoCard(trotter);
    const law = { ...data.dish.law, status: 'by-product by default: ask' as const, reason: 'Ask first.' };
    const { text } = readPdf(await methodCardPdf({ ...data, dish: { ...data.dish, law } }));
    expect(text).toContain('BY-PRODUCT BY DEFAULT: ASK. Ask first.');
  });

  test('the same input gives the same bytes', async () => {
    const data = demoCard(trotter);
    const [a, b] = [await methodCardPdf(data), await methodCardPdf(structuredClone(data))];
    expect(Buffer.compare(a, b)).toBe(0);
  });

  test('the longest names and long instructions still make one page, which says what is not on it', async () => {
    const method = stressed(900, [ask('weight', false)]);
    const card = readPdf(
      await methodCardPdf(cardOf({ ...demoKitchen.dishes[0]!, name: long(120), story: long(1_000) }, method)),
    );
    expect(card.pages).toBe(1);
    expect(card.text).toContain('Left off for want of room:');
    expect(card.text).toContain(deference);
    // No limit is ever left off.
    const critical = method.flatMap((s) => s.asks.filter((a) => a.critical === true));
    expect(critical.length).toBeGreaterThan(6);
    expect(card.text.match(/LIMIT/g)).toHaveLength(critical.length);
  });

  test('what cannot be one page is refused, naming the dish and why', async () => {
    const method = stressed(
      100,
      Array.from({ length: 12 }, () => ask('temperature', true)),
    );
    const refused = methodCardPdf(cardOf(demoKitchen.dishes[0]!, method));
    await expect(refused).rejects.toThrow(DoesNotFit);
    await expect(refused).rejects.toThrow(/Stuffed trotter.*does not fit one page/);
  });
});

test('a kitchen that thinks in Fahrenheit and ounces reads its card in them', async () => {
  const data = demoCard(trotter);
  const { text } = readPdf(
    await methodCardPdf({
      ...data,
      kitchen: { ...data.kitchen, units: 'US', place: 'US', zone: 'America/Chicago' },
    }),
  );
  const plain = text.replaceAll('\u00a0', ' ');
  expect(plain).toContain('steam 212 °F, 37 min');
  expect(plain).toContain('2 lb 2.6 oz');
  expect(plain).toContain('Printed 25 Nov 2026, 04:30');
});

describe('markup in what people type', () => {
  const nasty = '#panic("x") $1/0$ *b* _i_ ] [ `raw` <label> @ref \\ // /* "quoted" #include "/etc/passwd"';

  test('stays text on the card', async () => {
    const data = demoCard(trotter);
    const method = data.version.method.map((step, i) =>
      i === 0
        ? {
            ...step,
            name: nasty.slice(0, 100),
            how: nasty,
            asks: step.asks.map((a) => ({ ...a, label: nasty.slice(0, 60) })),
          }
        : step,
    );
    const card = readPdf(
      await methodCardPdf({
        ...data,
        dish: { ...data.dish, name: nasty.slice(0, 60), story: nasty },
        version: { ...data.version, method },
      }),
    );
    expect(card.pages).toBe(1);
    expect(card.text).toContain('#panic("x") $1/0$ *b* _i_ ] [ `raw` <label> @ref');
  });

  test('stays text in the record, a name of the log in its picture too', async () => {
    const data = recordOf(demoKitchen.batches[0]!);
    const { batch } = data;
    const record = readPdf(
      await batchRecordPdf({
        ...data,
        batch: {
          ...batch,
          closingNote: nasty,
          logs: batch.logs.map((l) => ({ ...l, name: nasty })),
          readings: batch.readings.map((r) => ({ ...r, note: nasty })),
        },
      }),
    );
    expect(record.text).toContain('#panic("x") $1/0$ *b* _i_ ] [ `raw` <label> @ref');
  });
});

describe('batchRecordPdf', () => {
  test('every page says whose word stands above it, that it is invented, and which page of how many it is', async () => {
    for (const batch of demoKitchen.batches) {
      const { texts, pages } = readPdf(await batchRecordPdf(recordOf(batch)));
      expect(texts).toHaveLength(pages);
      texts.forEach((text, i) => {
        expect(text).toContain(deference);
        expect(text).toContain('Invented data: demo kitchen');
        expect(text).toContain(`Page ${i + 1} of ${pages}`);
      });
    }
  });

  test('the kept batch: readings, a correction beside what it corrects, the judged log, who closed it, the journal’s hash', async () => {
    const data = recordOf(demoKitchen.batches[1]!);
    const { text } = readPdf(await batchRecordPdf(data));
    const plain = text.replaceAll('\u00a0', ' ');
    expect(plain).toContain('94 °C');
    expect(plain).toContain('9.4 °C');
    expect(plain).toMatch(/Corrected by line 8/);
    expect(plain).toMatch(/Corrects line 7/);
    expect(plain).toContain('decides: holds');
    expect(plain).toContain('Closed as fit to serve by Wren Aldous, 19 Nov 2026, 20:20');
    expect(plain).toContain(data.journal!.hash);
    expect(plain).not.toContain('does not hold');
  });

  test('the discarded batch: the log that failed, what was decided, what was never recorded', async () => {
    const { text } = readPdf(await batchRecordPdf(recordOf(demoKitchen.batches[0]!)));
    expect(text).toContain('DISCARDED');
    expect(text).toContain('decides: does not hold');
    expect(text).toContain('Discarded by Wren Aldous');
    expect(text).toContain('Overfilled by 170 g a piece');
    expect(text).toContain('not recorded');
    expect(text).not.toContain('Closed as fit to serve');
  });

  test('a value a hair short of its limit is not rounded onto it', async () => {
    const data = recordOf(demoKitchen.batches[0]!);
    const logs = data.batch.logs.map((l) => ({
      ...l,
      judgements: l.judgements.map((j) => ({ ...j, passes: false, value: 1.9996, limit: 2 })),
    }));
    const { text } = readPdf(await batchRecordPdf({ ...data, batch: { ...data.batch, logs } }));
    expect(text.replaceAll('\u00a0', ' ')).toContain('1.9996 min');
  });

  test('closed with something out of its limit is not closed as if nothing had been', async () => {
    const data = recordOf(demoKitchen.batches[1]!);
    expect(data.batch.status).toBe('closed');
    const { text } = readPdf(await batchRecordPdf({ ...data, batch: { ...data.batch, out: 2 } }));
    const clean = readPdf(await batchRecordPdf({ ...data, batch: { ...data.batch, out: 0 } })).text;
    expect(text.replaceAll(/\s+/g, ' ')).toMatch(/with \d+ out of limit and decided on/);
    expect(clean).not.toContain('out of limit and decided on');
  });

  test('the open batch is no record yet and lists what stands in the way', async () => {
    const { text } = readPdf(await batchRecordPdf(recordOf(demoKitchen.batches[2]!)));
    expect(text).toContain('OPEN');
    expect(text).toContain('Stands in the way of closing it');
    expect(text).toContain('Steam: no core log yet');
  });

  test('the head of the table of readings is on every page that the table is on', async () => {
    const data = recordOf(demoKitchen.batches[1]!);
    const many = Array.from({ length: 120 }, (_, i) => ({
      ...data.batch.readings[0]!,
      id: nextId(),
      note: `again ${i}`,
    }));
    const { texts } = readPdf(
      await batchRecordPdf({
        ...data,
        batch: { ...data.batch, readings: [...data.batch.readings, ...many] },
      }),
    );
    const withRows = texts.filter((t) => t.includes('again '));
    expect(withRows.length).toBeGreaterThan(2);
    for (const page of withRows) expect(page).toContain('Who and when');
  });

  test('the same input gives the same bytes', async () => {
    const data = recordOf(demoKitchen.batches[1]!);
    const [a, b] = [await batchRecordPdf(data), await batchRecordPdf(structuredClone(data))];
    expect(Buffer.compare(a, b)).toBe(0);
  });
});
