import { describe, expect, test } from 'vitest';
import { kitchen, nextId, printedAt } from '../../test/paper/lay.ts';
import { readPdf } from '../../test/paper/read-pdf.ts';
import type { AuthorityRequest } from '../contract/authority.ts';
import type { SpecificationContent, SpecificationVersion } from '../contract/specification.ts';
import {
  beginSpecification,
  openSpecification,
  specificationStarts,
} from '../contract/specification-starts.ts';
import { lawOf } from '../core/properties/parts-law.ts';
import { supplierDuties } from '../core/properties/supplier-duties.ts';
import type { SpecificationSheetData } from '../documents/specification-sheet.ts';
import { authorityRequestPdf, DoesNotFit, specificationSheetPdf } from './typeset.ts';

const plain = (text: string) => text.replaceAll('\u00a0', ' ').replace(/\s+/g, ' ');

const sheet = (
  species: string,
  content: SpecificationContent,
  more: Partial<SpecificationVersion> = {},
  inForce: number | null = 2,
): SpecificationSheetData => ({
  kitchen,
  printedAt,
  specification: {
    name: 'Long necks (invented)',
    species,
    supplierName: 'Marsh End Geese (invented)',
    inForce,
    endedAt: null,
  },
  version: {
    id: nextId(),
    specificationId: nextId(),
    number: 2,
    rev: 1,
    status: 'sent',
    reason: 'The neck skin came too short.',
    content,
    createdAt: '2026-11-01T09:00:00.000Z',
    createdBy: 'Wren Aldous (invented)',
    sentAt: '2026-11-02T09:00:00.000Z',
    sentBy: 'Wren Aldous (invented)',
    answers: [
      {
        id: nextId(),
        answer: 'agreed with changes',
        saidBy: 'the farmer (invented)',
        note: 'Thursdays only.',
        at: '2026-11-03T09:00:00.000Z',
        by: 'Wren Aldous (invented)',
      },
    ],
    ...more,
  },
});

const long = (n: number) =>
  'juniper '
    .repeat(Math.ceil(n / 8))
    .slice(0, n)
    .trim();

describe('specificationSheetPdf', () => {
  for (const start of specificationStarts)
    test(`one A4 page with all that is asked, what is refused, the law with its citations: ${start.name}`, async () => {
      const content = beginSpecification(start, 'GB-ENG');
      const page = readPdf(await specificationSheetPdf(sheet(start.species, content)));
      const text = plain(page.text);
      expect(page.pages).toBe(1);
      expect(page.size[0]).toBeCloseTo(210, 0);
      expect(page.size[1]).toBeCloseTo(297, 0);
      for (const refused of content.refusedIf) expect(text).toContain(plain(refused));
      for (const d of content.dimensions) expect(text).toContain(d.name);
      for (const duty of supplierDuties(start.species, content.what, 'GB-ENG'))
        expect(text).toContain(plain(duty.text));
      expect(text).toContain('1069/2009');
      expect(text).toContain('Checked 2026-11-25');
      expect(text).toContain('Version 2');
      expect(text).toContain('in force');
      expect(text).toContain('agreed with changes, the farmer (invented)');
      expect(text).toContain('have the last word');
      expect(text).toContain('Invented data: demo kitchen');
    });

  test('a head of poultry is told to be stopped, with both texts; a draft and an animal nobody knows say so', async () => {
    const text = plain(
      readPdf(
        await specificationSheetPdf(
          sheet(
            'duck',
            { ...openSpecification, what: 'head' },
            { status: 'draft', sentAt: null, sentBy: null, answers: [] },
            null,
          ),
        ),
      ).text,
    );
    expect(text).toContain('BY-PRODUCT BY DEFAULT: ASK');
    expect(text).toMatch(/1069\/2009 Article 10\(b\)\(ii\).*853\/2004/);
    expect(text).toContain('DRAFT — NOT SENT');
    expect(text).toContain('No answer is written down.');
    const unknown = plain(readPdf(await specificationSheetPdf(sheet('emu', openSpecification))).text);
    expect(unknown).toContain('Not known: ask.');
    expect(unknown).toContain('Not known here: ask the official veterinarian');
    const old = plain(
      readPdf(
        await specificationSheetPdf(
          sheet('sheep', { ...openSpecification, what: 'head', ageMonthsAtMost: 18 }),
        ),
      ).text,
    );
    expect(old).toContain('PROHIBITED');
  });

  test('much is set small on one page; what cannot be is refused with what to shorten', async () => {
    const much: SpecificationContent = {
      ...beginSpecification(specificationStarts[0]!, 'GB-ENG'),
      cut: long(600),
      dimensions: Array.from({ length: 12 }, (_, i) => ({
        name: `length ${i} ${long(40)}`,
        lowMm: 10 + i,
        highMm: 90,
      })),
      labelled: Array.from({ length: 10 }, (_, i) => `${i} ${long(100)}`),
      documents: Array.from({ length: 8 }, (_, i) => `${i} ${long(100)}`),
      refusedIf: Array.from({ length: 15 }, (_, i) => `${i} ${long(150)}`),
      note: long(1_000),
    };
    const page = readPdf(await specificationSheetPdf(sheet('goose', much)));
    expect(page.pages).toBe(1);
    expect(plain(page.text)).toContain('have the last word');
    const tooMuch = {
      ...much,
      refusedIf: Array.from({ length: 30 }, (_, i) => `${i} ${long(195)}`),
      labelled: Array.from({ length: 20 }, (_, i) => `${i} ${long(115)}`),
      documents: Array.from({ length: 20 }, (_, i) => `${i} ${long(115)}`),
      note: long(2_000),
      stunning: long(300),
      bleeding: long(300),
      packed: long(300),
    };
    await expect(specificationSheetPdf(sheet('goose', tooMuch))).rejects.toThrow(DoesNotFit);
  });
});

const question: AuthorityRequest = {
  id: nextId(),
  dishId: nextId(),
  species: 'goose',
  part: 'head',
  content: {
    kitchenName: 'The kitchen (invented)',
    place: 'GB-ENG',
    law: lawOf('goose', 'head', 'GB-ENG'),
    dishName: 'Goose head broth (invented)',
    versionNumber: 3,
    supplier: 'Marsh End Geese (invented), killed there on Thursdays',
    specification: 'Whole geese, heads kept with them, version 2',
    process: ['Scald at 62 °C for 90 s and pluck', 'Simmer 4 h at 95 °C'],
    predicted: ['70 °C at the middle of the head after 31 min; 2 min at 70 °C or its equal is had at 33 min'],
    measured: ['Probe log of 12 November: 71.2 °C or more for 3 h 20 min'],
    laboratory: 'Salmonella not found in 25 g, five samples (invented)',
    question:
      'May heads of geese passed at inspection, scalded and cleaned, be simmered for broth and the broth be served?',
  },
  askedAt: '2026-11-20T10:00:00.000Z',
  askedBy: 'Wren Aldous (invented)',
  answers: [],
  lifts: false,
};

describe('authorityRequestPdf', () => {
  const paper = async (request: AuthorityRequest) => {
    const pdf = readPdf(await authorityRequestPdf({ kitchen, printedAt, request }));
    return { ...pdf, text: plain(pdf.text) };
  };

  test('everything the authority needs on one page, with room for the answer', async () => {
    const { text, pages } = await paper(question);
    const { content: c } = question;
    expect(pages).toBe(1);
    for (const words of [
      c.question,
      c.supplier,
      c.specification,
      c.laboratory,
      ...c.process,
      ...c.predicted,
      ...c.measured,
    ])
      expect(text).toContain(words);
    for (const words of [
      'head, goose',
      'Goose head broth (invented), version 3',
      '20 Nov 2026',
      'checked 2026-11-25',
    ])
      expect(text).toContain(words);
    expect(text).toContain('1069/2009 Article 10(b)(ii)');
    expect(text).toContain('The authority’s answer');
    for (const blank of ['agreed on conditions', 'refused', 'Reference', 'Signature', 'Holds until'])
      expect(text).toContain(blank);
    expect(text).toContain('have the last word');
    expect(text).toContain('Invented data: demo kitchen');
  });

  test('what was not done is said, and an answer is printed with its conditions', async () => {
    const bare = await paper({
      ...question,
      content: {
        ...question.content,
        process: [],
        predicted: [],
        measured: [],
        laboratory: '',
        supplier: '',
        specification: '',
        dishName: null,
      },
      answers: [
        {
          id: nextId(),
          answer: 'agreed on conditions',
          authority: 'Marsh District (invented)',
          saidBy: 'A. Officer (invented)',
          reference: 'MD/17',
          conditions: 'Broth only.',
          dated: '2026-11-24',
          until: '2027-05-01',
          by: 'Wren Aldous (invented)',
          recordedAt: '2026-11-24T12:00:00.000Z',
        },
      ],
    });
    for (const words of [
      'No process is given.',
      'the model was not run',
      'Nothing was measured yet.',
      'No laboratory results.',
      'Not named.',
      'Conditions: Broth only.',
      'MD/17',
      'until 2027-05-01',
    ])
      expect(bare.text).toContain(words);
  });

  test('sixty long steps go over several pages, the cautions on each and the answer whole', async () => {
    const { text, pages } = await paper({
      ...question,
      content: {
        ...question.content,
        process: Array.from({ length: 60 }, (_, i) => `step ${i + 1}: ${long(400)}`),
      },
    });
    expect(pages).toBeGreaterThan(1);
    expect(text.match(/have the last word/g)).toHaveLength(pages);
    expect(text).toContain(`Page ${pages} of ${pages}`);
  });
});
