import fittingLosses from '../../../data/fitting-losses.json' with { type: 'json' };

/** The sizes for which the table lists losses. */
export type PipeSize = keyof typeof fittingLosses.fully_turbulent_factor;

export interface FittingRow {
  readonly fitting: string;
  readonly K: number | Readonly<Record<PipeSize, number>>;
}

const rows: readonly FittingRow[] = [...fittingLosses.by_size, ...fittingLosses.fixed] as readonly FittingRow[];
const named = (fitting: string): FittingRow | undefined => rows.find((row) => row.fitting === fitting);

const always = (fitting: string): FittingRow => {
  const row = named(fitting);
  if (!row) throw new Error(`The table of fittings has no row ${fitting}`);
  return row;
};

/** What stands at the two ends of every line unless the list says otherwise. */
export const FLUSH_ENTRANCE = always('entrance_flush_sharp');
export const EXIT = always('exit_any');

/** Whether a valve is said to stand part-way, where no table gives its loss. */
export const partClosed = (text: string): boolean =>
  /throttled|\b(?:half|part(?:ly)?|partially|mostly|nearly|quarter)[- ]+(?:way )?(?:closed|open|shut)/i.test(text);

/** What people call a fitting, and the row of the table that it is. The first that matches is taken. */
const WORDS: readonly (readonly [RegExp, string])[] = [
  [/\bu-?bend|180|return bend/, 'return_bend_180_close'],
  [/45/, 'elbow_45_standard'],
  [/sweep|long radius/, 'elbow_90_long_radius_r_1_5d'],
  [/moulded|molded|solvent/, 'elbow_90_solvent_weld_moulded_small'],
  [/elbow|\bell|90|bend\b|bends\b/, 'elbow_90_standard'],
  [/tee.*side|side.*tee|branch/, 'tee_branch'],
  [/tee|\bt\b/, 'tee_run'],
  [/gate/, 'gate_valve_open'],
  [/union ball|true union|reduced/, 'union_ball_valve_reduced_port'],
  [/ball/, 'ball_valve_full_bore_open'],
  [/globe/, 'globe_valve_open'],
  [/check|non-?return/, 'swing_check_seat_angled'],
  [/union|coupling|coupler/, 'union_or_coupling'],
  [/strainer|screen|basket/, 'strainer_on_intake'],
  [/bulkhead/, 'bulkhead_flush'],
  [/project|sticking in|standpipe/, 'entrance_inward_projecting'],
  [/flush entrance|entrance|inlet/, 'entrance_flush_sharp'],
  [/exit|outlet/, 'exit_any'],
  [/valve/, 'gate_valve_open'],
];

/** The table's row for what a person calls a fitting, or undefined. */
export function findFitting(text: string): FittingRow | undefined {
  const found = WORDS.find(([pattern]) => pattern.test(text.toLowerCase()));
  return found && named(found[1]);
}
