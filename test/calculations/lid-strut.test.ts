import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answerIn } from '../../src/core/answer.js';
import { lidStrut } from '../../src/core/calculations/lid-strut.js';
import { METRIC } from '../../src/core/show-value.js';
import { outcomeOf, type Said, told, worked } from './worked.js';

const lid = (kg: number, cm: number, more: Said = {}): Said => ({ mass: [kg, 'kg'], lid_depth: [cm, 'cm'], ...more });
/** Mount 20 cm out on the lid, straight above the mount on the body 20 cm in front of the hinge and 30 cm down. */
const upright: Said = {
  lid_mount_along: [20, 'cm'],
  body_mount_x: [20, 'cm'],
  body_mount_y: [-30, 'cm'],
  open_angle: [30, 'deg'],
};
/** Body mount straight below the hinge, 20 cm down; lid mount 20 cm out. */
const below: Said = {
  lid_mount_along: [20, 'cm'],
  body_mount_x: [0, 'cm'],
  body_mount_y: [-20, 'cm'],
  open_angle: [90, 'deg'],
};
const said = (given: Said) => {
  const { outcome } = worked(lidStrut, given);
  const { headline, cautions } = answerIn(outcome, METRIC);
  return { headline, cautions: cautions.map(({ level, text }) => `${level}: ${text}`).join('\n') };
};
const flagOf = (given: Said, id: string) => worked(lidStrut, given).outcome.results.find((r) => r.id === id)?.value;

describe('worked by hand', () => {
  test('an even lid lifts with half its weight at the front: 20 kg take 98.07 N', () => {
    expect(worked(lidStrut, lid(20, 50)).value('hand_force_without_struts', 'N')).toBeCloseTo(98.0665, 9);
  });

  test('a strut straight up under the middle of a closed 10 kg lid carries all of it, two share it', () => {
    const given = lid(10, 40, { ...upright, struts: [1, 'count'] });
    expect(worked(lidStrut, given).value('force_each_closed', 'N')).toBeCloseTo(98.0665, 6);
    expect(worked(lidStrut, given).value('moment_arm_closed', 'mm')).toBeCloseTo(200, 9);
    expect(worked(lidStrut, given).value('strut_length_closed', 'mm')).toBeCloseTo(300, 9);
    expect(worked(lidStrut, { ...given, struts: [2, 'count'] }).value('force_each_closed', 'N')).toBeCloseTo(
      49.03325,
      6,
    );
  });

  test('20 cm out and 20 cm down: 20·sqrt(2) cm long closed with an arm of 10·sqrt(2) cm', () => {
    const { value } = worked(lidStrut, lid(10, 40, { ...below, open_angle: [60, 'deg'] }));
    expect(value('strut_length_closed', 'cm')).toBeCloseTo(20 * Math.SQRT2, 9);
    expect(value('moment_arm_closed', 'cm')).toBeCloseTo(10 * Math.SQRT2, 9);
  });

  test('the same at 60°: an isosceles triangle with 150° at the hinge, 2·20·sin 75° long, arm 20·cos 75°', () => {
    const { value } = worked(lidStrut, lid(10, 40, { ...below, open_angle: [60, 'deg'] }));
    expect(value('strut_length_open', 'cm')).toBeCloseTo(40 * Math.sin((75 * Math.PI) / 180), 6);
    expect(value('moment_arm_open', 'cm')).toBeCloseTo(20 * Math.cos((75 * Math.PI) / 180), 6);
    expect(value('stroke_needed', 'cm')).toBeCloseTo(38.637 - 28.284, 2);
    // 10 kg, 20 cm out, at 60° turns with 9.80665 N·m; two arms of 5.176 cm.
    expect(value('force_each_open', 'N')).toBeCloseTo(9.80665 / (2 * 0.0517638), 3);
  });

  test('lights 10 cm below the lid turn harder as it opens: 10 kg at 60° with 0.2·0.5 + 0.1·0.866 m', () => {
    const { value } = worked(lidStrut, lid(10, 40, { ...below, open_angle: [60, 'deg'], cg_off: [-10, 'cm'] }));
    expect(value('force_each_open', 'N')).toBeCloseTo((98.0665 * 0.1866025) / (2 * 0.0517638), 2);
  });

  test('two struts of 100 N, arm 20 cm, under a 10 kg lid 40 cm deep push (40 − 19.61)/0.4 = 51 N up at the front', () => {
    const given = lid(10, 40, { ...upright, strut_rating: [100, 'N'] });
    expect(worked(lidStrut, given).value('push_when_closed', 'N')).toBeCloseTo(50.97, 2);
  });
});

test('force goes with weight and against the number of struts; lengths with neither', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1, max: 90, noNaN: true }),
      fc.integer({ min: 1, max: 2 }),
      fc.integer({ min: 10, max: 80 }),
      (kg, n, open) => {
        const at = (mass: number, struts: number) =>
          worked(lidStrut, lid(mass, 40, { ...below, open_angle: [open, 'deg'], struts: [struts, 'count'] }));
        const here = at(kg, n);
        for (const id of ['force_each_largest', 'force_each_closed', 'rating_each_with_margin']) {
          expect(at(2 * kg, n).value(id, 'N')).toBeCloseTo(2 * here.value(id, 'N'), 6);
          expect(at(kg, 2 * n).value(id, 'N')).toBeCloseTo(here.value(id, 'N') / 2, 6);
        }
        expect(at(2 * kg, n).value('stroke_needed', 'm')).toBeCloseTo(here.value('stroke_needed', 'm'), 12);
        const largest = here.value('force_each_largest', 'N');
        for (const id of ['force_each_closed', 'force_each_open'])
          expect(largest).toBeGreaterThanOrEqual(here.value(id, 'N') - 1e-9);
      },
    ),
  );
});

test('one hand up to 25 lbf at the front edge: 22.67 kg in an even lid', () => {
  expect(flagOf(lid(22.6, 50), 'needs_struts')).toBe(false);
  expect(flagOf(lid(22.8, 50), 'needs_struts')).toBe(true);
});

describe('struts at hand', () => {
  const at = (more: Said) => lid(10, 40, { ...below, open_angle: [60, 'deg'], ...more });
  const largest = worked(lidStrut, at({})).value('force_each_largest', 'N');
  test('strong enough from the largest force on', () => {
    expect(flagOf(at({ strut_rating: [largest * 1.01, 'N'] }), 'strong_enough')).toBe(true);
    expect(flagOf(at({ strut_rating: [largest * 0.99, 'N'] }), 'strong_enough')).toBe(false);
    expect(flagOf(at({}), 'strong_enough')).toBeUndefined();
  });
  test('must reach 282.8 mm closed and 386.4 mm open', () => {
    const fits = (shortest: number, stroke: number) =>
      flagOf(at({ strut_shortest: [shortest, 'mm'], strut_stroke: [stroke, 'mm'] }), 'length_fits');
    expect(fits(280, 110)).toBe(true);
    expect(fits(285, 110)).toBe(false);
    expect(fits(280, 105)).toBe(false);
  });
});

describe('the first line', () => {
  const at = (more: Said) => lid(10, 40, { ...below, open_angle: [60, 'deg'], ...more });
  test.each([
    [at({ strut_shortest: [285, 'mm'], strut_stroke: [110, 'mm'] }), /^They do not fit: .* 283 mm .* 386 mm/],
    [at({ strut_shortest: [280, 'mm'], strut_stroke: [100, 'mm'] }), /^They do not fit/],
    [at({ strut_rating: [120, 'N'] }), /^Within this check: 120 N each/],
    [at({ strut_rating: [97, 'N'] }), /^Just strong enough/],
    [at({ strut_rating: [60, 'N'] }), /^Too weak: 60 N each drops/],
    [lid(30, 40, { ...below, open_angle: [60, 'deg'] }), /^It needs help, and 2 × /],
    [at({}), /^One hand lifts it, 49 N .* to stay open it takes 2 × /],
    [lid(30, 40), /^Yes, it needs struts or a second person: .* 147 N/],
    [lid(10, 40), /^One hand lifts it: .* 49 N/],
  ] as [Said, RegExp][])('%j', (given, expected) => expect(said(given).headline).toMatch(expected));
});

describe('cautions on both sides of where they begin', () => {
  const PROP = /stop: Never reach under/;
  const STAY = /a stay or a mechanical prop/;
  const CATCH = /give it a catch/;
  const BACK = /Past upright/;
  const PINCH = /like scissors/;
  const TELL = /Tell me how far it opens/;
  const STRONG = /Half as strong again/;
  const back: Said = { lid_mount_along: [20, 'cm'], body_mount_x: [10, 'cm'], body_mount_y: [-20, 'cm'] };
  test.each([
    [lid(30, 40), [STAY, TELL], [PROP, PINCH, CATCH]],
    [lid(10, 40), [STAY], [TELL, PROP]],
    [lid(10, 40, { ...upright, strut_rating: [100, 'N'] }), [PROP, PINCH, CATCH], [STAY, BACK, TELL]],
    [lid(10, 40, { ...upright, strut_rating: [49, 'N'] }), [PROP], [CATCH]],
    [lid(10, 40, { ...upright, struts: [1, 'count'], strut_rating: [150, 'N'] }), [STRONG], []],
    [lid(10, 40, { ...upright, struts: [1, 'count'], strut_rating: [140, 'N'] }), [], [STRONG]],
    [lid(10, 40, { ...back, open_angle: [100, 'deg'] }), [BACK], []],
    [lid(10, 40, { ...back, open_angle: [85, 'deg'] }), [], [BACK]],
  ] as [Said, RegExp[], RegExp[]][])('%j', (given, some, none) => {
    const { cautions } = said(given);
    for (const text of some) expect(cautions).toMatch(text);
    for (const text of none) expect(cautions).not.toMatch(text);
  });
});

test('places said as so far below, with or without a minus', () => {
  const { body_mount_y: _, ...rest } = lid(10, 40, {
    ...upright,
    lid_mount_off: [-2, 'cm'],
    body_mount_below: '30 cm below the hinge',
  });
  const length = (given: Said) => worked(lidStrut, given).value('strut_length_closed', 'cm');
  expect(length(rest)).toBeCloseTo(28, 9);
  expect(length({ ...rest, body_mount_below: '-300 mm under the hinge' })).toBeCloseTo(28, 9);
  const { lid_mount_off: __, ...more } = rest;
  expect(length({ ...more, lid_mount_below: '2 cm below the lid' })).toBeCloseTo(28, 9);
  expect(told(outcomeOf(lidStrut, { ...rest, body_mount_below: 'lower' })).join()).toMatch(
    /22 cm below the hinge would do/,
  );
});

test('asks for weight and depth alone; once a mount or struts are spoken of, for the rest of the mounts', () => {
  expect(told(outcomeOf(lidStrut, {}))).toEqual(['mass', 'lid_depth']);
  expect(told(outcomeOf(lidStrut, lid(10, 40, { open_angle: [80, 'deg'] })))).toEqual([
    'lid_mount_along',
    'body_mount_x',
    'body_mount_y',
  ]);
  expect(told(outcomeOf(lidStrut, lid(10, 40, { ...below, strut_stroke: [10, 'cm'] })))).toEqual(['strut_shortest']);
});

test.each([
  [lid(10, 40, { struts: [0, 'count'] }), /At least one strut/],
  [lid(10, 40, { cg_distance: [45, 'cm'] }), /swapped/],
  [lid(10, 40, { ...below, lid_mount_along: [45, 'cm'] }), /beyond its front edge/],
  [lid(10, 40, { ...below, body_mount_y: [20, 'cm'] }), /pushes the closed lid shut/],
  [lid(10, 40, { ...below, body_mount_x: [-5, 'cm'], open_angle: [110, 'deg'] }), /over centre/],
  [lid(10, 40, { ...below, open_angle: [150, 'deg'] }), /10 to 110/],
  [lid(10, 40, { ...below, margin: [2, '1'] }), /1\.1 to 1\.3/],
] as [Said, RegExp][])('%j is refused', (given, because) => {
  const outcome = outcomeOf(lidStrut, given);
  expect(outcome.kind).toBe('refusal');
  expect(told(outcome).join(' ')).toMatch(because);
});

test('a strut that a hand cannot press down is too strong, not within the check', () => {
  const light = (newton: number): Said => lid(1, 50, { ...upright, strut_rating: [newton, 'N'] });
  expect(said(light(1000)).headline).toMatch(/^Too strong: 1000 N each/);
  expect(said(light(20)).headline).not.toMatch(/^Too strong/);
});
