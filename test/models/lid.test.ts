import fc from 'fast-check';
import { expect, test } from 'vitest';
import { lidModels, strutArm, strutForce } from '../../src/core/models/lid.js';

const metres = (low: number, high: number) => fc.double({ min: low, max: high, noNaN: true });
const mounts = fc.record({ u: metres(0.05, 0.5), v: metres(-0.05, 0.05), x: metres(0, 0.1), y: metres(-0.5, -0.1) });
const angle = metres(0.05, 1.8);

test('the lever arm is the change of the strut’s length with the angle (virtual work)', () => {
  const length = (a: number, { u, v, x, y }: { u: number; v: number; x: number; y: number }) =>
    Math.hypot(u * Math.cos(a) - v * Math.sin(a) - x, u * Math.sin(a) + v * Math.cos(a) - y);
  fc.assert(
    fc.property(angle, mounts, (a, at) => {
      fc.pre(length(a, at) > 0.02);
      const slope = (length(a + 1e-6, at) - length(a - 1e-6, at)) / 2e-6;
      expect(strutArm(a, at)).toBeCloseTo(slope, 5);
    }),
  );
});

test('a strut at right angles to a level lid has the whole distance as its arm: 10 kg, 20 cm out, 98.07 N', () => {
  const at = { u: 0.2, v: 0, x: 0.2, y: -0.3 };
  expect(strutArm(0, at)).toBeCloseTo(0.2, 12);
  expect(strutForce(0, { m: 10, along: 0.2, off: 0, n: 1 }, at)).toBeCloseTo(98.0665, 9);
});

test('the largest force and the least arm are those of a fine scan', () => {
  const named = (name: string) => lidModels.find((entry) => entry.name === name)!.apply;
  fc.assert(
    fc.property(mounts, metres(0.2, 1.9), metres(1, 60), metres(-0.1, 0), (at, open, m, off) => {
      const place = [at.u, at.v, at.x, at.y, open] as const;
      const angles = Array.from({ length: 5001 }, (_, i) => (open * i) / 5000);
      const arm = Math.min(...angles.map((a) => strutArm(a, at)));
      expect(named('least_strut_arm')(...place)).toBeCloseTo(arm, 5);
      fc.pre(arm > 0.005);
      const load = { m, along: 0.2, off, n: 2 };
      const most = Math.max(...angles.map((a) => strutForce(a, load, at)));
      const found = named('largest_strut_force')(m, 0.2, off, 2, ...place);
      expect(Math.abs(found / most - 1)).toBeLessThan(1e-4);
      const where = named('worst_lid_angle')(m, 0.2, off, 2, ...place);
      expect(strutForce(where, load, at)).toBeCloseTo(found, 9);
    }),
  );
});
