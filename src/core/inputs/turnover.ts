/** Volumes an hour that people run, per second. */
export const turnoverConstants = {
  n_low: { value: 3 / 3600, unit: '1/s', name: '3 times an hour, the low end of common practice' },
  n_high: { value: 10 / 3600, unit: '1/s', name: '10 times an hour, the high end of common practice' },
};

export const TURNOVER_SOURCE = '3 to 10 volumes an hour: common practice, no source';
