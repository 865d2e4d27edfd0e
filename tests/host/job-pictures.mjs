// Pictures of what stands around the text: the job view, the status bar, our menus, questions, a comparison.
import { choose, runCommand } from './workbench.mjs';

const WAIT_MS = 30_000;
/** An editor shows what a pointer rests on after a while, and moves what it opens. */
const REST_MS = 1500;

const row = (page, words) =>
  page.locator('.split-view-view .monaco-list-row', { hasText: words }).first();

/** Only the job is open in the Explorer, all of it. */
async function openJobView(page) {
  for (const header of await page.locator('.pane-header[aria-expanded="true"]').all())
    if (!(await header.getAttribute('aria-label'))?.startsWith('Job')) await header.click();
  const job = page.locator('.pane-header[aria-label^="Job"]').first();
  if ((await job.getAttribute('aria-expanded')) === 'false') await job.click();
  await row(page, 'Work').waitFor({ timeout: WAIT_MS });
  for (const part of ['Costs', 'Price', 'To find out', 'North boundary']) await unfold(page, part);
}

async function unfold(page, words) {
  const found = row(page, words);
  if ((await found.count()) && (await found.getAttribute('aria-expanded')) === 'false')
    await found.locator('.monaco-tl-twistie').click();
}

async function away(page) {
  await page.keyboard.press('Escape');
  await page.mouse.move(700, 20);
  await page.waitForTimeout(REST_MS / 2);
}

/** @param shot takes a picture under a name */
export async function photographJob(page, shot) {
  await openJobView(page);
  await row(page, 'Earned for each hour').hover();
  await page.waitForTimeout(REST_MS);
  await shot('job');
  await away(page);
  await page.locator('.statusbar-item', { hasText: '/h' }).first().hover();
  await page.waitForTimeout(REST_MS);
  await shot('bar');
  await away(page);
  await page.locator('.editor-actions .codicon-toolbar-more').last().click();
  await page.locator('.monaco-menu .action-item', { hasText: 'Perpend' }).first().hover();
  await page.waitForTimeout(REST_MS);
  await shot('menu');
  await away(page);
  await away(page);
  await photographQuestions(page, shot);
}

async function photographQuestions(page, shot) {
  await runCommand(page, 'Perpend: Save a Paper, Page or Drawing');
  await page
    .locator('.quick-input-list', { hasText: 'For the client' })
    .waitFor({ timeout: WAIT_MS });
  await shot('save');
  await away(page);
  await runCommand(page, 'Perpend: Write into the Record');
  await page.locator('.quick-input-list', { hasText: 'worked' }).waitFor({ timeout: WAIT_MS });
  await shot('record');
  await choose(page, 'worked');
  await page.keyboard.press('Enter');
  await page.waitForTimeout(REST_MS / 2);
  await page.keyboard.type('two people');
  await page.keyboard.press('Enter');
  await page.waitForTimeout(REST_MS);
  await shot('record-wrong');
  await away(page);
  await runCommand(page, 'Perpend: Compare with a File');
  await choose(page, 'log-store');
  await page
    .locator('.diff-review-summary, .monaco-diff-editor')
    .first()
    .waitFor({ timeout: WAIT_MS });
  await page.waitForTimeout(REST_MS);
  await shot('compare');
}
