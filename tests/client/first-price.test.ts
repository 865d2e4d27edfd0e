/** The first steps as they are taught: a firm's file to fill in, a job from a template beside it, a price. */
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { inside } from '../cli/inside';
import { folderOf } from '../cli/perpend';
import { root } from '../tree';

const FIRM = readFileSync(path.join(root, 'server/library/starts/uk.perp'), 'utf8');
const TEMPLATES = readdirSync(path.join(root, 'server/library/templates')).map((name) =>
  name.replace(/\.perp$/, ''),
);

describe('a job of a template beside a firm’s file as it comes', () => {
  test.each(TEMPLATES)('%s has a whole price at once, and no error', (name) => {
    const cwd = folderOf({ 'firm.perp': FIRM });
    expect(inside(['new', name, '--out', 'job.perp'], { cwd }).code).toBe(0);
    const told = inside(['price', 'job.perp'], { cwd });
    expect(told.code).toBe(0);
    expect(told.out).toMatch(/^ {2}Price +£\d/m);
    expect(told.out).not.toMatch(/incomplete/i);
  });
});
