// The four kinds of theme that an editor has, each by the one that it comes with, and how one is put on.
const WAIT_MS = 120_000;
/** Pages in the window hear of it a little later. */
const FADE_MS = 600;

/** What the system asks for, and the words by which a window and a page in it say that they have it on. */
export const THEMES = {
  light: { dark: false, contrast: false, kind: 'vs', page: 'vscode-light' },
  dark: { dark: true, contrast: false, kind: 'vs-dark', page: 'vscode-dark' },
  contrast: { dark: true, contrast: true, kind: 'hc-black', page: 'vscode-high-contrast' },
  'contrast-light': {
    dark: false,
    contrast: true,
    kind: 'hc-light',
    page: 'vscode-high-contrast-light',
  },
};

/** Settings of a window that follows what the system asks for. */
export const FOLLOWS = {
  'window.autoDetectColorScheme': true,
  'window.autoDetectHighContrast': true,
  'workbench.preferredLightColorTheme': 'Default Light Modern',
  'workbench.preferredDarkColorTheme': 'Default Dark Modern',
  'workbench.preferredHighContrastColorTheme': 'Default High Contrast',
  'workbench.preferredHighContrastLightColorTheme': 'Default High Contrast Light',
};

/** Run in the window before anything else: a system whose wishes can be changed. A real one would force its own colours too. */
function standIn() {
  const real = globalThis.matchMedia.bind(globalThis);
  const asked = { dark: false, contrast: false };
  const answers = {
    '(prefers-color-scheme: light)': () => !asked.dark,
    '(prefers-color-scheme: dark)': () => asked.dark,
    '(forced-colors: active)': () => asked.contrast,
  };
  const listening = new Set();
  const listen = (_, told) => listening.add(told);
  const leave = (_, told) => listening.delete(told);
  globalThis.matchMedia = (media) => {
    const answer = answers[media];
    if (!answer) return real(media);
    const list = { media, addEventListener: listen, removeEventListener: leave };
    return Object.defineProperty(list, 'matches', { get: answer });
  };
  globalThis.askForTheme = (wish) => {
    Object.assign(asked, wish);
    for (const told of listening) told();
  };
}

/** Before the window is opened. */
export function makeReady(page) {
  return page.addInitScript(standIn);
}

/** Puts on one of the themes, and waits until it is to be seen. Whatever is open stays open. */
export async function putOn(stage, theme) {
  const { kind, dark, contrast } = THEMES[theme];
  await stage.page.evaluate((asked) => globalThis.askForTheme(asked), { dark, contrast });
  await stage.page.locator(`.monaco-workbench.${kind}`).waitFor({ timeout: WAIT_MS });
  await stage.page.waitForTimeout(FADE_MS);
  stage.theme = theme;
}
