import assert from 'node:assert/strict';
import * as vscode from 'vscode';
import { JOB, open, openText, uriOf } from './files';
import { bytesOf, closeAll, run, tabs, textOf } from './seen';
import { until } from './wait';

/** Saves and reads what was written. */
async function saved(page: string, form: string, options?: object): Promise<Uint8Array> {
  const to = uriOf(`out/${page}.${form}`);
  const file = await run<vscode.Uri>('perpend.save', { uri: uriOf(JOB), page, form, options, to });
  assert.equal(file?.toString(), to.toString());
  return bytesOf(to);
}

const asText = (bytes: Uint8Array) => new TextDecoder('latin1').decode(bytes);

describe('saving', () => {
  before(() => open(JOB));
  after(closeAll);

  it('writes the quote as PDF', async () => {
    assert.match(asText(await saved('quote', 'pdf')), /^%PDF-1\.\d[\s\S]*%%EOF\s*$/);
  });

  it('writes the quote as a page, with the price and no cost', async () => {
    const html = new TextDecoder().decode(await saved('quote', 'html'));
    assert.match(html, /^<!doctype html>/i);
    assert.match(html, /£4,050\.00/);
    assert.doesNotMatch(html, /2,555\.01/);
  });

  it('writes the buying list as a table', async () => {
    assert.match(new TextDecoder().decode(await saved('buying', 'csv')), /Harwick red facing/);
  });

  it('writes a drawing', async () => {
    const svg = new TextDecoder().decode(
      await saved('drawing', 'svg', { work: 'north', view: 'front' }),
    );
    assert.match(svg, /^(<\?xml[^>]*>\s*)?<svg\b/);
  });
});

describe('pages', () => {
  after(closeAll);

  for (const page of ['price', 'quote', 'drawing'])
    it(`perpend.${page} opens the preview`, async () => {
      await open(JOB);
      await run(`perpend.${page}`);
      const isPreview = ({ input }: vscode.Tab) =>
        input instanceof vscode.TabInputWebview && input.viewType.includes('perpend.preview');
      await until('a preview', tabs, (all) => all.some(isPreview));
      await closeAll();
    });

  it('shows the working of a figure by its row', async () => {
    await open(JOB);
    const part = { figure: 'job.price' };
    await run('perpend.part.working', { part, uri: uriOf(JOB).toString() });
    await until('a page', tabs, (all) => all.some(({ label }) => /job\.price/.test(label)));
  });
});

describe('what changes a job', () => {
  after(closeAll);

  it('writes a line of the record, as an edit that is not saved', async () => {
    const good = await textOf(uriOf(JOB));
    const document = await openText('recorded.perp', good);
    await run('perpend.record', { uri: document.uri.toString(), what: 'sent', date: '2026-03-02' });
    assert.match(document.getText(), /^record[\s\S]*sent +2026-03-02 +£4050\.00/m);
    assert.ok(document.isDirty);
    await run('undo');
    assert.equal(document.getText(), good);
  });

  it('makes the next job as a text that is not saved', async () => {
    await open(JOB);
    await run('perpend.next', { uri: uriOf(JOB).toString(), client: 'Tarn Valley Allotments' });
    const made = vscode.window.activeTextEditor?.document;
    assert.ok(made?.isUntitled);
    assert.equal(made.languageId, 'perpend');
    assert.match(made.getText(), /Tarn Valley Allotments/);
    assert.doesNotMatch(made.getText(), /Quillbank/);
  });

  it('makes a copy for a partner without money', async () => {
    await open(JOB);
    const wishes = { whom: 'Halden Brothers', without: 'money', client: false };
    await run('perpend.share', { uri: uriOf(JOB).toString(), ...wishes });
    const made = vscode.window.activeTextEditor?.document;
    assert.ok(made?.isUntitled);
    assert.match(made.getText(), /Halden Brothers/);
    assert.doesNotMatch(made.getText(), /£|Quillbank/);
  });

  it('takes in what a partner’s copy says otherwise, and Undo takes it out again', async () => {
    const good = await textOf(uriOf(JOB));
    const theirs = await openText('came-back.perp', good.replace('height    16', 'height    18'));
    const ours = await openText('sent-out.perp', good);
    const uris = { uri: ours.uri.toString(), theirs: theirs.uri.toString() };
    await run('perpend.take', { ...uris, rates: false });
    assert.equal(ours.getText(), theirs.getText());
    await run('undo');
    assert.equal(ours.getText(), good);
  });

  it('makes a job from a template', async () => {
    await run('perpend.new', { template: 'garden-wall', answers: [], folder: uriOf('fresh') });
    const made = vscode.window.activeTextEditor?.document;
    assert.ok(made?.isUntitled);
    assert.match(made.getText(), /^perpend 1/);
    assert.match(made.getText(), /use "\.\.\/firm\.perp"/);
  });
});

describe('over all jobs', () => {
  after(closeAll);

  it('looks over them', async () => {
    await run('perpend.jobs');
    await until('a page', tabs, (all) => all.some(({ label }) => /job/i.test(label)));
  });
});
