// What the pictures are taken on: one window of an editor, a copy of the examples, and ways to get about in it.
import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { withPalette } from '../../.scripts/png.mjs';
import { address, remote } from './server.mjs';
import { putOn } from './themes.mjs';
import { openFile, runCommand, waitForHint } from './workbench.mjs';

const WAIT_MS = 180_000;
/** An editor shows what a pointer rests on after a while, and moves what it opens. */
const REST_MS = 1200;
/** Enough for a window, whose letters are drawn in many greys. */
const COLOURS = 128;

export class Stage {
  /** @param places `port` of the server, `jobs`, `extension`, `target` of the pictures, names of `themes` */
  constructor(page, places) {
    this.page = page;
    Object.assign(this, { theme: 'light', ...places });
  }

  file(job) {
    return path.join(this.jobs, job);
  }

  /** A picture in each theme, beginning with the one that is on: what is open stays open. */
  async shot(name, clip) {
    const at = Math.max(0, this.themes.indexOf(this.theme));
    const order = [...this.themes.slice(at), ...this.themes.slice(0, at)];
    for (const theme of order) {
      if (theme !== this.theme) await putOn(this, theme);
      await this.look(name, clip);
    }
  }

  /** A picture as the window is now; with `clip`, of that part of it. */
  async look(name, clip) {
    const picture = withPalette(await this.page.screenshot({ clip }), COLOURS);
    writeFileSync(path.join(this.target, `${name}-${this.theme}.png`), picture);
  }

  /** The window anew, with one file open in it. */
  async start(job) {
    await openFile(this.page, this.port, {
      folder: this.jobs,
      file: this.file(job),
      development: this.extension,
    });
    await waitForHint(this.page);
    this.theme = 'light';
  }

  /** A window with no folder. */
  async empty() {
    const url = new URL(address(this.port, this.jobs, [this.development()]));
    url.searchParams.delete('folder');
    url.searchParams.set('ew', 'true');
    await this.page.goto(url.href);
    await this.page.locator('.monaco-workbench').waitFor({ timeout: WAIT_MS });
    this.theme = 'light';
  }

  development() {
    return ['extensionDevelopmentPath', remote(this.port, this.extension)];
  }

  async rest(times = 1) {
    await this.page.waitForTimeout(REST_MS * times);
  }

  async press(...keys) {
    for (const key of keys) await this.page.keyboard.press(key);
  }

  command(title) {
    return runCommand(this.page, title);
  }

  /** Lets go of whatever is open over the window. */
  async away() {
    await this.press('Escape', 'Escape');
    await this.page.mouse.move(700, 870);
    await this.rest(0.4);
  }

  /** Nothing open, and nothing of what was written kept. */
  async clear() {
    await this.away();
    for (;;) {
      const dirty = this.page.locator('.tab.dirty').first();
      if (!(await dirty.count())) break;
      await dirty.click();
      await this.command('File: Revert File');
      await this.rest();
    }
    if (await this.page.locator('.tab').count()) await this.command('View: Close All Editors');
    if (await this.page.locator('.part.panel.bottom').isVisible()) await this.press('Control+KeyJ');
    await this.page.mouse.move(700, 870);
    await this.rest(0.5);
  }

  /** Only this file is open, with its totals. */
  async only(job) {
    await this.clear();
    await this.press('Control+KeyP');
    const input = this.page.locator('.quick-input-widget input').first();
    await input.waitFor({ timeout: WAIT_MS });
    await input.fill(this.file(job));
    const [folder, name] = [path.basename(path.dirname(job)), path.basename(job)];
    await this.page
      .locator('.quick-input-list .monaco-list-row.focused', { hasText: name })
      .filter({ hasText: folder })
      .waitFor({ timeout: WAIT_MS });
    await this.press('Enter');
    await waitForHint(this.page);
    await this.rest();
  }

  line(words) {
    return this.page.locator('.monaco-editor .view-line', { hasText: words }).first();
  }

  /** Puts the cursor at the end of the first line that holds the words. */
  async at(words) {
    await this.line(words).click({ position: { x: 30, y: 8 }, timeout: WAIT_MS });
    await this.press('End');
  }

  /** The page in the preview: a frame in a frame. */
  get preview() {
    return this.page.frameLocator('iframe.webview').frameLocator('#active-frame');
  }

  /** Opens the preview on one of its views, and waits until it is there. */
  async show(kind) {
    const show = this.preview.locator('#show');
    if (!(await this.page.locator('iframe.webview').count()))
      await this.command('Perpend: Open Preview to the Side');
    await show.waitFor({ timeout: WAIT_MS });
    await show.selectOption(kind, { timeout: WAIT_MS });
    await this.rest();
  }
}
