/** PDF and XLSX from the bundled server, which reads the heavy writers and the fonts beside it: read back by others. */
import { execFileSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { unzipSync } from 'fflate';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { makeBundle, shipped } from '../../.scripts/bundles.mjs';
import { makeFonts } from '../../.scripts/fonts.mjs';
import { EXPORT, type Exported, type ExportParams } from '../../shared/protocol/pages';
import { FIRM, JOB } from '../cli/jobs';
import { bundled, Peer } from './peer';

/** One red dot. */
const DOT = Buffer.from(
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAIAAACQd1PeAAAADElEQVR4nGP4z8AAAAMBAQDJ/pLvAAAAAElFTkSuQmCC',
  'base64',
);

let peer: Peer;
let uri: string;

beforeAll(async () => {
  const server = await bundled();
  const folder = path.dirname(server);
  const papers = shipped.find(({ out }) => out === 'dist/papers.cjs')!;
  await makeBundle({ ...papers, out: path.join(folder, 'papers.cjs') }, { dev: true });
  await makeFonts(path.join(folder, 'fonts'));
  peer = new Peer(server);
  writeFileSync(
    path.join(peer.folder, 'firm.perp'),
    FIRM.replace('  terms ', '  logo "sign.png"\n  terms '),
  );
  writeFileSync(path.join(peer.folder, 'sign.png'), DOT);
  await peer.start();
  uri = await peer.open('job.perp', JOB);
});
afterAll(() => peer.stop());

const file = (params: Omit<ExportParams, 'uri'>) => peer.ask<Exported>(EXPORT, { uri, ...params });
const bytesOf = ({ base64 }: Exported) => new Uint8Array(Buffer.from(base64, 'base64'));
/** The file of an answer, for other programs to read. */
function inFile(made: Exported): string {
  const name = path.join(peer.folder, made.name);
  writeFileSync(name, bytesOf(made));
  return name;
}
const pdfText = (made: Exported) =>
  execFileSync('pdftotext', ['-layout', inFile(made), '-'], {
    encoding: 'utf8',
  });

test('a quote as PDF is read by poppler, with its logo, and is the same bytes each time', async () => {
  const made = await file({ page: 'quote', form: 'pdf' });
  expect(made).toMatchObject({ name: 'Quote 26-107.pdf', type: 'application/pdf', asides: [] });
  const text = pdfText(made);
  expect(text).toContain('Wall along the lane');
  expect(text).toContain('£2,184.00');
  const pictures = execFileSync('pdfimages', ['-list', inFile(made)], {
    encoding: 'utf8',
  });
  expect(pictures).toMatch(/image/);
  expect((await file({ page: 'quote', form: 'pdf' })).base64).toBe(made.base64);
});

test('a price as PDF is for the firm, and says so', async () => {
  const text = pdfText(await file({ page: 'price', form: 'pdf' }));
  expect(text).toMatch(/Overhead\s+11\.7%/);
  expect(text).toContain('For the firm alone');
});

test('a buying list as XLSX has a sheet for each merchant, with figures as figures', async () => {
  const made = await file({ page: 'buying', form: 'xlsx', options: { prices: true } });
  const parts = unzipSync(bytesOf(made));
  const sheet = new TextDecoder().decode(parts['xl/worksheets/sheet1.xml']);
  expect(Object.keys(parts).filter((name) => name.includes('worksheets/'))).toHaveLength(1);
  expect(sheet).toMatch(/<v>[\d.]+<\/v>/);
  expect((await file({ page: 'buying', form: 'xlsx', options: { prices: true } })).base64).toBe(
    made.base64,
  );
});

test('letters that no font has are told', async () => {
  await peer.edit(uri, JOB.replace('T. Alder', 'T. 漢字'));
  const { asides } = await file({ page: 'quote', form: 'pdf' });
  expect(asides.join(' ')).toContain('have no 漢 字');
});
