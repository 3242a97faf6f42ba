/** Every panel system over every support, in every metal: solved without a throw, with an honest verdict. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { panelSystems } from '../job/cover-input.ts';
import type { Answer } from './answer.ts';
import { solveJob } from './solve-job.ts';

const shelf = JSON.parse(readFileSync(new URL('../../demo/shelf.json', import.meta.url), 'utf8'));
const lines = { spacing: '30 in' };
const supports = {
  plywood: { kind: 'plywood', thickness: '19/32 in', specificGravity: 0.42 },
  OSB: { kind: 'OSB', thickness: '7/16 in', specificGravity: 0.5 },
  'lumber deck': { kind: 'lumber deck', thickness: '1 1/2 in', species: 'Douglas Fir-Larch' },
  'wood purlins': { kind: 'wood purlins', depth: '1 1/2 in', species: 'Southern Pine', ...lines },
  'steel deck': { kind: 'steel deck', thickness: '20 ga', grade: 'SS33' },
  'cold-formed purlins': { kind: 'cold-formed purlins', thickness: '54 mil', grade: 'SS50', ...lines },
  'hat channels': { kind: 'hat channels', thickness: '43 mil', grade: 'SS33', ...lines },
  'structural steel': { kind: 'structural steel', thickness: '0.25 in', grade: 'A36', ...lines },
} as const;
const sheets = {
  steel: { metal: 'steel', thickness: '24 ga', grade: 'SS50', coating: 'aluminium-zinc' },
  aluminium: { metal: 'aluminium', thickness: '0.040 in', grade: '3105-H25' },
  copper: { metal: 'copper', thickness: '20 oz', grade: 'H00' },
  stainless: { metal: 'stainless', thickness: '26 ga', grade: '304' },
  zinc: { metal: 'zinc', thickness: '0.7 mm', grade: 'titanium zinc' },
} as const;

function answerOf(system: string, support: object, sheet: object, more: object = {}): Answer {
  const solved = solveJob(
    {
      schema: 'deckbite/job/1',
      name: 'matrix',
      basis: { codeYear: 'IBC 2021' },
      place: { saltWater: '50 mi' },
      wind: { by: 'standard', speed: '110 mph', exposure: 'C', enclosure: 'enclosed' },
      roof: { form: 'gable', length: '40 ft', width: '30 ft', slope: '4:12', eaveHeight: '12 ft' },
      panel: { system, coverage: '16 in', ribSpacing: '8 in', seamHeight: '1 1/2 in', ...sheet },
      support,
      ...more,
    },
    shelf,
  );
  if (!solved.ok) throw new Error(JSON.stringify(solved.faults));
  return solved.value.answer;
}

for (const system of panelSystems)
  describe(system, () => {
    for (const [name, support] of Object.entries(supports))
      for (const [metal, sheet] of Object.entries(sheets))
        test(`${metal} over ${name}`, () => {
          const answer = answerOf(system, support, sheet);
          const primary = answer.choices[0];
          expect(primary?.lines.length).toBeGreaterThan(3);
          // No uplift test is given: whatever the fasteners do, the panel is not proved.
          for (const line of primary?.lines ?? []) expect(line.verdict).not.toBe('holds');
          for (const choice of answer.choices) {
            const numbers = choice.lines.flatMap((line) => [
              line.spacing_in,
              line.place_ft2,
              line.fastenerLoad_lbf ?? 0,
              ...line.checks.map((check) => check.ratio ?? 0),
            ]);
            expect(numbers.every(Number.isFinite)).toBe(true);
            if (!choice.item) expect(choice.rejected.length).toBeGreaterThan(0);
          }
        });
  });

describe('what fits where', () => {
  const item = (answer: Answer) => answer.choices[0]?.item;
  test('clips on plywood take a number 10-13, on light steel a number 10-16 or coarser 12-14', () => {
    expect(item(answerOf('standing seam on clips', supports.plywood, sheets.steel))?.designation).toMatch(
      /^10-13 /,
    );
    expect(
      item(answerOf('standing seam on clips', supports['hat channels'], sheets.steel))?.designation,
    ).toMatch(/^(10-16|12-14) /);
  });
  test('clips on quarter-inch steel take a 12-24', () => {
    expect(
      item(answerOf('standing seam on clips', supports['structural steel'], sheets.steel))?.designation,
    ).toMatch(/^12-24 /);
  });
  test('copper panels take no carbon steel', () => {
    expect(item(answerOf('exposed ribbed', supports['wood purlins'], sheets.copper))?.metal).toMatch(
      /stainless/,
    );
  });
  test('LRFD and ASD choose spacings within a step of each other', () => {
    const at = (method: string) =>
      answerOf('standing seam on clips', supports.plywood, sheets.steel, {
        basis: { codeYear: 'IBC 2021', method },
      }).choices[0]?.lines.map((line) => line.spacing_in) ?? [];
    const [asd, lrfd] = [at('ASD'), at('LRFD')];
    asd.forEach((spacing, i) => {
      expect(Math.abs(spacing - (lrfd[i] as number))).toBeLessThanOrEqual(6);
    });
  });
  test('insulation lengthens the screw by its thickness', () => {
    const length = (thickness: string) => {
      const found = item(
        answerOf(
          'standing seam on clips',
          supports['steel deck'],
          { ...sheets.steel, clip: 'CL200TI', seamHeight: '2 in' },
          {
            insulation: { name: 'foam', thickness, plate: 'BP46', compressiveStrength: '20 psi' },
            roofSnow: '20 psf',
          },
        ),
      );
      return found?.kind === 'screw' ? found.length : 0;
    };
    expect(length('4 in') - length('2 in')).toBeGreaterThanOrEqual(1.9);
  });
  test('under a flange or an exposed panel insulation and underlayment count in the reach', () => {
    const more = {
      insulation: { name: 'foam', thickness: '3 in' },
      underlayment: { name: 'felt', thickness: '0.05 in' },
    };
    const answer = answerOf('nail flange', supports['steel deck'], sheets.steel, more);
    const length = answer.choices[0]?.item;
    expect(length?.kind === 'screw' ? length.length : 0).toBeGreaterThan(3.05);
    expect(
      answerOf('exposed ribbed', supports['wood purlins'], sheets.steel, {
        insulation: { name: 'foam', thickness: '6 in' },
      }).choices[0]?.item,
    ).toBeUndefined();
  });
  test('dead load is deducted only when asked, at 0.6 in ASD and 0.9 in LRFD', () => {
    const pressure = (basis: object) =>
      answerOf('standing seam on clips', supports.plywood, sheets.steel, {
        basis: { codeYear: 'IBC 2021', ...basis },
        overrides: [{ connection: 'panel clips', spacing: '12 in', because: 'held for comparison' }],
      }).choices[0]?.lines[0]?.placePressure_psf ?? 0;
    expect(pressure({}) - pressure({ deductDeadLoad: '5 psf' })).toBeCloseTo(3, 9);
    expect(pressure({ method: 'LRFD' }) - pressure({ method: 'LRFD', deductDeadLoad: '5 psf' })).toBeCloseTo(
      4.5,
      9,
    );
  });
  test('an override is taken, checked again and marked', () => {
    const answer = answerOf('standing seam on clips', supports.plywood, sheets.steel, {
      overrides: [{ connection: 'panel clips', zone: '3r', spacing: '48 in', because: 'the owner insists' }],
    });
    const lines = answer.choices[0]?.lines.map((line) => [
      answer.field.zones[line.zone]?.label,
      line.setBy,
      line.verdict,
    ]);
    expect(lines).toContainEqual(['3r', 'override', 'falls short']);
    expect(answer.remarks.join(' ')).toContain('Changed by hand: panel clips, zone 3r: the owner insists');
  });
  test('an overridden item that does not fit is taken, and falls short', () => {
    const answer = answerOf('standing seam on clips', supports.plywood, sheets.steel, {
      overrides: [{ connection: 'panel clips', item: 'PW10-150K', because: 'in stock' }],
    });
    expect([answer.choices[0]?.item?.id, answer.choices[0]?.overridden]).toEqual(['PW10-150K', ['in stock']]);
    for (const line of answer.choices[0]?.lines ?? []) {
      expect(line.verdict).toBe('falls short');
      expect(line.checks[line.governing]?.capacity.because).toContain('too proud under a seam');
    }
  });
});
