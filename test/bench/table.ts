/** One measurement beside what it is compared with. */
export interface Row {
  readonly name: string;
  readonly value: number;
  readonly unit: string;
  readonly baseline: { readonly name: string; readonly value: number };
  /** Times better than the baseline. */
  readonly ratio: number;
  readonly aim?: string;
  readonly met?: boolean;
}

interface Aim {
  readonly text: string;
  readonly met: (value: number, ratio: number) => boolean;
}

/** A rate: more is better. */
export const rate = (name: string, value: number, baseline: Row['baseline'], aim?: Aim): Row =>
  row(name, value, '/s', baseline, value / baseline.value, aim);

/** A time: less is better. */
export const time = (name: string, value: number, unit: string, baseline: Row['baseline'], aim?: Aim): Row =>
  row(name, value, unit, baseline, baseline.value / value, aim);

function row(name: string, value: number, unit: string, baseline: Row['baseline'], ratio: number, aim?: Aim): Row {
  return { name, value, unit, baseline, ratio, ...(aim ? { aim: aim.text, met: aim.met(value, ratio) } : {}) };
}

const figures = (value: number): string => (value >= 100 ? Math.round(value).toString() : value.toPrecision(3));

export function markdown(rows: readonly Row[]): string {
  const cells = rows.map(({ name, value, unit, baseline, ratio, aim = '', met }) => [
    name,
    `${figures(value)} ${unit}`,
    `${baseline.name}: ${figures(baseline.value)} ${unit}`,
    `${figures(ratio)} ×`,
    aim,
    met === undefined ? '' : met ? 'yes' : 'no',
  ]);
  const lines = [
    ['what', 'value', 'baseline in the same run', 'times better', 'aim', 'met'],
    Array(6).fill('---'),
    ...cells,
  ];
  return lines.map((line) => `| ${line.join(' | ')} |`).join('\n');
}
