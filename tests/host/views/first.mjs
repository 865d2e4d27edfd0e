// What one meets first: the first steps, File > New File, our commands, our settings, a window with no folder.

const STEPS = ['example', 'preview', 'firm', 'new', 'measure', 'quote'];

export default {
  async steps(on) {
    await on.clear();
    await on.command('Perpend: First Steps');
    for (const step of STEPS) {
      const card = on.page.locator(`.getting-started-step[data-step-id$="#${step}"]`).first();
      await card.waitFor({ timeout: 60_000 });
      if (!(await card.getAttribute('class')).includes('expanded')) await card.click();
      await on.page.mouse.move(700, 870);
      await on.rest(3); // its picture comes later than its words
      await on.shot(`steps-${step}`);
    }
  },
  async newFile(on) {
    await on.clear();
    await on.command('Create: New File...');
    await on.rest();
    await on.shot('new-file');
    await on.away();
  },
  async palette(on) {
    await on.only('garden-wall/job.perp');
    await on.press('F1');
    await on.page.locator('.quick-input-widget input').first().fill('>Perpend');
    await on.rest();
    await on.shot('palette');
    for (let i = 0; i < 20; i++) await on.press('ArrowDown');
    await on.rest(0.5);
    await on.shot('palette-end');
    await on.away();
  },
  async settings(on) {
    await on.clear();
    await on.command('Preferences: Open Settings (UI)');
    const search = on.page.locator('.settings-editor .suggest-input-container').first();
    await search.click({ timeout: 60_000 });
    await on.page.keyboard.type('@ext:perpend.perpend');
    await on.rest(2);
    await on.shot('settings');
  },
  /** The last of all: it leaves the folder. */
  async emptyWindow(on) {
    await on.empty();
    await on.page
      .getByRole('tab', { name: /^Explorer/ })
      .first()
      .waitFor({ timeout: 60_000 });
    const welcome = on.page.locator('.split-view-view', { hasText: 'Open an Example' }).first();
    if (!(await welcome.isVisible())) await on.press('Control+Shift+KeyE');
    await on.rest(5);
    await on.shot('empty');
  },
};
