import Ajv from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { jsonSchema } from '../answer/schemas.ts';
import { allPapers } from './all-papers.ts';
import { crewSheetPdf } from './crew/crew-sheet-pdf.ts';
import { type PdfPage, pdfPages, textOf } from './read-back/pdf-pages.ts';
import { demos, hostileName, solvedAsIs, solvedDemo } from './read-back/solved-demo.ts';
import { submittalPdf } from './submittal/submittal-pdf.ts';
import { wordsOf } from './words/words.ts';

const NAMES = [
  'submittal.pdf',
  'crew-sheet.pdf',
  'order.csv',
  'order.xlsx',
  'layout.svg',
  'layout.dxf',
  'result.json',
];

/** Texts that start outside the border of their page, or hang over it below. */
function outside(pages: readonly PdfPage[]): string[] {
  return pages.flatMap(({ width, height, texts }) =>
    texts
      .filter(({ x, y }) => x < 28 || x > width - 28 || y < 28 || y > height - 28 - 2)
      .map(({ text }) => text),
  );
}

describe('all papers', () => {
  for (const demo of demos)
    test(`${demo}: every paper is made, and twice the same`, async () => {
      const heard: string[] = [];
      const first = await allPapers(solvedAsIs(demo), (name) => heard.push(name));
      const second = await allPapers(solvedAsIs(demo));
      expect(first.map(({ name }) => name)).toEqual(NAMES);
      expect(heard).toEqual(NAMES);
      first.forEach(({ name, bytes }, i) => {
        expect(bytes.length, name).toBeGreaterThan(300);
        expect(Buffer.from(bytes as string).equals(Buffer.from(second[i]?.bytes as string)), name).toBe(true);
      });
    });
  test('the result document keeps its published schema', async () => {
    const validate = new Ajv({ strict: false }).compile(jsonSchema('result'));
    for (const demo of demos) {
      const papers = await allPapers(solvedAsIs(demo));
      const result = papers.find(({ name }) => name === 'result.json');
      expect(validate(JSON.parse(String(result?.bytes))), JSON.stringify(validate.errors)).toBe(true);
    }
  });
});

describe('the submittal', () => {
  for (const demo of demos)
    test(`${demo}: every page has its number, the job and the verdicts; nothing is outside the border`, async () => {
      const solved = solvedAsIs(demo);
      const pages = pdfPages(await submittalPdf(solved));
      const { job, count } = solved.answer;
      expect(pages.length).toBeGreaterThan(8);
      pages.forEach((page, i) => {
        const text = textOf([page]);
        expect(text).toContain(`page ${i + 1} of ${pages.length}`);
        expect(text).toContain(job.name);
        expect(text).toContain(`\n${count.unproven}\nunproven`);
      });
      expect(outside(pages)).toEqual([]);
      expect(textOf(pages)).not.toMatch(/NaN|undefined|\[object/);
    });
  test('every schedule line is on paper with its ratio, every connection has a page', async () => {
    const solved = solvedAsIs('a-boathouse');
    const text = textOf(pdfPages(await submittalPdf(solved)));
    for (const { connection, item, lines } of solved.answer.choices) {
      expect(text).toContain(connection.id);
      expect(text).toContain(item?.id);
      for (const line of lines) if (line.ratio !== undefined) expect(text).toContain(line.ratio.toFixed(2));
    }
  });
  test('what is unproven is said on the first page with its question', async () => {
    const [first] = pdfPages(await submittalPdf(solvedAsIs('a-boathouse')));
    const text = textOf(first ? [first] : []).replaceAll('\n', ' ');
    expect(text).toContain('How is the deck nailed: nail, spacing at edges and in the field');
    expect(text).toContain('Unproven');
  });
  test('what falls short is said on the first page with its numbers', async () => {
    const [first] = pdfPages(await submittalPdf(solvedAsIs('b-long-hall')));
    expect(textOf(first ? [first] : [])).toMatch(/panel clips, zone 3: .* carries [\d.]+ \w+ of [\d.]+ \w+/);
  });
  test('cautions and limits stand on it in the language of the job', async () => {
    for (const language of ['en', 'es'] as const) {
      const pages = pdfPages(
        await submittalPdf(solvedDemo('a-boathouse', { print: { units: 'US', language } })),
      );
      const text = textOf(pages).replaceAll('\n', ' ');
      for (const limit of Object.values(wordsOf(language).limits)) expect(text).toContain(limit);
    }
  });
  test('the Spanish papers in SI units stay inside the border, with the words of the catalogue', async () => {
    const solved = solvedDemo('a-boathouse', { print: { units: 'SI', language: 'es' } });
    const pages = pdfPages(await submittalPdf(solved));
    expect(outside([...pages, ...pdfPages(await crewSheetPdf(solved))])).toEqual([]);
    const text = textOf(pages);
    for (const word of [
      '3 voladizo',
      'entablado de contrachapado',
      'Uniones de remates, sur',
      'cerrado',
      'extraplana',
    ])
      expect(text).toContain(word);
    // A label of a section; the engine's sentences stay English.
    expect(text).not.toMatch(/3 overhang|^plywood deck,/m);
    expect(text).toContain('63.0');
    expect(text).toContain('m/s');
  });
  test('SI jobs are printed on A4 in SI units', async () => {
    const pages = pdfPages(await submittalPdf(solvedAsIs('d-reroof')));
    expect(pages[0]?.width).toBeCloseTo(595.28, 1);
    expect(textOf(pages)).toContain('600');
    expect(textOf(pages)).toContain('kPa');
  });
  test('no date is printed when the job has none', async () => {
    const solved = solvedDemo('a-boathouse', { date: undefined });
    expect(textOf(pdfPages(await submittalPdf(solved)))).not.toMatch(/1980|2026-11-25/);
  });
});

describe('the crew sheet', () => {
  for (const demo of demos)
    test(`${demo}: two pages, both languages, every item and spacing`, async () => {
      const solved = solvedAsIs(demo);
      const pages = pdfPages(await crewSheetPdf(solved));
      expect(pages).toHaveLength(2);
      const text = textOf(pages).replaceAll('\n', ' ');
      for (const language of ['en', 'es'] as const) {
        const { crew } = wordsOf(language);
        for (const line of [...crew.inspect, ...crew.dos, ...crew.donts, ...crew.safety, crew.notPlan])
          expect(text).toContain(line);
      }
      for (const { item } of solved.answer.choices) expect(text).toContain(item?.id);
      expect(text).not.toMatch(/NaN|undefined/);
      expect(outside(pages)).toEqual([]);
    });
});

describe('hostile texts', () => {
  const solved = solvedDemo('a-boathouse', {
    name: hostileName.slice(0, 120),
    reference: 'x'.repeat(60),
    note: `${hostileName} `.repeat(10),
    'panel.upliftTest': { ask: `${'very long question without a break '.repeat(12)}?` },
    'underlayment.name': 'W'.repeat(80),
  });
  test('break no paper, and stay inside the border', async () => {
    const papers = await allPapers(solved);
    expect(papers.map(({ name }) => name)).toEqual(NAMES);
    for (const name of ['submittal.pdf', 'crew-sheet.pdf']) {
      const paper = papers.find((one) => one.name === name);
      const pages = pdfPages(paper?.bytes as Uint8Array);
      expect(outside(pages)).toEqual([]);
      expect(textOf(pages)).toContain('script');
    }
  });
});
