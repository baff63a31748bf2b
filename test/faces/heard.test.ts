import { expect, test } from 'vitest';
import { plainWords } from '../../src/faces/discord/heard.js';
import { restOptions } from '../../src/faces/discord/options.js';

test.each([
  ['<@123456789012345678> is 300 W enough', 'is 300 W enough'],
  ['<@!123456789012345678>heater?', 'heater?'],
  ['ask <@&5> or <#6>', 'ask or'],
  ['90 gal <:tank:1234> <a:wave:99>', '90 gal'],
  ['at <t:1700000000> and <t:1700000000:R>', 'at and'],
  ['</heater size:1234> then', 'then'],
  ['  two\n lines  here ', 'two\n lines here'],
  ['salinity < 35 and > 30, x<y>', 'salinity < 35 and > 30, x<y>'],
])('%j is heard as %j', (content, words) => {
  expect(plainWords(content)).toBe(words);
});

test.each([
  ['http://127.0.0.1:4000/api', 'http://127.0.0.1:4000/api'],
  ['http://127.0.0.1:4000/api/', 'http://127.0.0.1:4000/api'],
  ['http://127.0.0.1:4000/api/v10/', 'http://127.0.0.1:4000/api'],
])('the API at %s is asked at %s', (given, api) => {
  expect(restOptions({ apiUrl: given })).toEqual({ api });
});
