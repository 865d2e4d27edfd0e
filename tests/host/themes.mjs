// The four kinds of theme that an editor has, each by the one that it comes with, and how one is put on.
import { readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';

export const THEMES = {
  light: 'Default Light Modern',
  dark: 'Default Dark Modern',
  contrast: 'Default High Contrast',
  'contrast-light': 'Default High Contrast Light',
};

/** What a window says of its kind of theme. */
const CLASSES = {
  light: 'vs',
  dark: 'vs-dark',
  contrast: 'hc-black',
  'contrast-light': 'hc-light',
};
const WAIT_MS = 30_000;
/** Pages in the window hear of it a little later. */
const FADE_MS = 500;

/** Changes the settings of a window that is open, as its reader may at any time. */
export function settle({ userFolder }, settings) {
  const file = path.join(userFolder, 'User/settings.json');
  const before = JSON.parse(readFileSync(file, 'utf8'));
  writeFileSync(file, JSON.stringify({ ...before, ...settings }));
}

/** Puts on one of the themes, and waits until it is to be seen. */
export async function putOn(stage, theme) {
  settle(stage, { 'workbench.colorTheme': THEMES[theme] });
  await stage.page.locator(`.monaco-workbench.${CLASSES[theme]}`).waitFor({ timeout: WAIT_MS });
  await stage.page.waitForTimeout(FADE_MS);
  stage.theme = theme;
}
