// What stands around the text: the job's parts, its price in the status bar, our menu.
const JOB = 'garden-wall/job.perp';
const WAIT_MS = 30_000;

const row = (page, words) =>
  page.locator('.split-view-view .monaco-list-row', { hasText: words }).first();

/** Only the job is open in the Explorer. */
async function openJobView(page) {
  const job = page.locator('.pane-header[aria-label^="Job"]').first();
  if ((await job.getAttribute('aria-expanded')) === 'false') await job.click();
  const others = page.locator('.pane-header[aria-expanded="true"]:not([aria-label^="Job"])');
  while (await others.count()) await others.first().click();
}

async function unfold(page, words) {
  const found = row(page, words);
  if ((await found.count()) && (await found.getAttribute('aria-expanded')) === 'false')
    await found.locator('.monaco-tl-twistie').click();
}

export default {
  async job(on) {
    await on.only(JOB);
    await openJobView(on.page);
    await row(on.page, 'Work').waitFor({ timeout: WAIT_MS });
    for (const part of ['Costs', 'Price', 'To find out', 'North boundary'])
      await unfold(on.page, part);
    await row(on.page, 'Earned for each hour').hover();
    await on.rest();
    await on.shot('job');
  },
  async jobEmpty(on) {
    await on.clear();
    await openJobView(on.page);
    await on.rest();
    await on.shot('job-empty');
  },
  async bar(on) {
    await on.only(JOB);
    await on.page.locator('.statusbar-item', { hasText: '/h' }).first().hover();
    await on.rest();
    await on.shot('bar');
  },
  async menu(on) {
    await on.only(JOB);
    await on.page.locator('.editor-actions .codicon-toolbar-more').last().click();
    await on.page.locator('.monaco-menu .action-item', { hasText: 'Perpend' }).first().hover();
    await on.rest();
    await on.shot('menu');
    await on.away();
  },
};
