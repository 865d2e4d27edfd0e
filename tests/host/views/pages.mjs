// Pages in words: how a figure came about, what a finding means, what moved the price.
import { choose } from '../workbench.mjs';

const JOB = 'garden-wall/job.perp';

/** The editor's own page of Markdown, in a frame in a frame. */
async function page(on, words) {
  const frame = on.page.frameLocator('iframe.webview').frameLocator('#active-frame');
  await frame.locator('body', { hasText: words }).waitFor({ timeout: 60_000 });
  await on.rest();
}

export default {
  async working(on) {
    await on.only(JOB);
    await on.command('Perpend: Show the Working of a Figure');
    await on.page.locator('.quick-input-list', { hasText: 'Price' }).waitFor({ timeout: 60_000 });
    await on.shot('figures');
    await choose(on.page, 'Price');
    await page(on, 'Price');
    await on.shot('working');
  },
  async help(on) {
    await on.only(JOB);
    await on.at('opening gate');
    await on.press('Alt+F8');
    const code = on.page
      .locator('.peekview-widget a.code-link, .marker-widget a.code-link')
      .first();
    await code.click({ timeout: 30_000 });
    await page(on, 'Before');
    await on.shot('help');
  },
  async compare(on) {
    await on.only(JOB);
    await on.command('Perpend: Compare with a File');
    await choose(on.page, 'log-store');
    await on.page.locator('.monaco-diff-editor').first().waitFor({ timeout: 60_000 });
    await on.rest(2);
    await on.shot('compare');
    await on.command('Perpend: Show What Moved the Price');
    await on.rest(2);
    await on.shot('moved');
  },
};
