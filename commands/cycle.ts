import type { Command } from '../src/conversation/command.js';

export const cycleCommand: Command = {
  name: 'cycle',
  description: 'The fishless cycle: doses, log, readiness, and how fast to stock',
  calculations: [
    'cycle.status',
    'cycle.dose_ammonium_chloride',
    'cycle.dose_ammonia_solution',
    'cycle.oxidation_rate',
    'cycle.rate_from_log',
    'cycle.nitrogen_balance',
    'cycle.alkalinity_used',
    'stocking.tan_from_feed',
    'stocking.feed_supported',
    'stocking.rate_at_low_ammonia',
  ],
};
