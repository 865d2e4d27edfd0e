import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { readJson } from '../tree';
import { perpend, useCommandLine } from './perpend';

useCommandLine();

const JOB = `perpend 1
use uk
labour
  bricklayer £20 per h
  gang 1 bricklayer
  day 8 h
  start 07:30
  set-up 30 min per day
  break 30 min at 12:00
output
  facework 25 bricks per h
wall a "Yard wall"
  stands held
  length 4490 mm
  height 10 courses
`;
const day = (text: string, ...more: string[]) => perpend(['day', '-', ...more], { input: text });

describe('perpend day', () => {
  test('puts the work into days', () => {
    // 200 bricks at 25 an hour are 8 h; seven and a half are left of a day.
    const { code, out } = day(JOB);
    expect(code).toBe(0);
    expect(out).toBe(`Day 1, 07:30 to 16:00
  07:30  Setting up
  08:00  Laying the wall  Yard wall
  12:00  Break
  12:30  Laying the wall  Yard wall

Day 2, 07:30 to 08:30
  07:30  Setting up
  08:00  Laying the wall  Yard wall

8 h of work; charged as 1.5 days
`);
  });

  test('takes the coping off before the wall under it', () => {
    const { out } = day(
      `${JOB.split('wall a')[0]}repair r\n  rebuild 900 mm x 4 courses\n  recope 900 mm\n`,
    );
    const tasks = [...out.matchAll(/Taking (?:off the coping|down)/g)].map(([text]) => text);
    expect(tasks).toEqual(['Taking off the coping', 'Taking down']);
  });

  test('says where work that waits takes more days than the price has', () => {
    const pier = 'repair pier\n  size 1.5 x 1.5 bricks\n  rebuild 24 courses\n';
    const face = 'repair face\n  repoint 5.5 m2 raked 20 mm\n';
    const head = JOB.split('wall a')[0];
    const told = /In this order it takes 3 days, more than the price has/;
    // Face 5.5 h, down and up some 5: two lifts, and the first is not done on the first day.
    expect(day(`${head}${face}${pier}`).out).toMatch(told);
    expect(day(`${head}${pier}${face}`).out).not.toContain('In this order');
  });

  test('starts when it is told', () => {
    expect(day(JOB, '--start', '09:00').out).toContain('Day 1, 09:00 to 17:30\n');
    expect(day(JOB, '--start', '25:00')).toMatchObject({ code: 2 });
    expect(day(JOB, '--start', 'nine')).toMatchObject({ code: 2 });
  });

  test('says why there is none', () => {
    expect(day('perpend 1\nuse uk\n').out).toBe('There is no work in it that takes time.\n');
    expect(day(JOB.replace('30 min per day', '8 h per day')).out).toMatch(/^Nothing is left of/);
  });

  test('as JSON that keeps its promise', () => {
    const document = JSON.parse(day(JOB, '--json').out);
    const valid = new Ajv2020({ strict: false }).compile(
      readJson('shared/json-schema/perpend-1.schema.json') as object,
    );
    expect(valid(document), JSON.stringify(valid.errors)).toBe(true);
    expect(document.timetable[0].entries[1]).toEqual({
      from: '08:00',
      to: '12:00',
      label: 'Laying the wall',
      work: 'Yard wall',
    });
  });
});
