// A user's settings for a window under test: nothing that calls out, asks, or moves by itself.
import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';

const quiet = {
  'telemetry.telemetryLevel': 'off',
  'update.mode': 'none',
  'extensions.autoCheckUpdates': false,
  'extensions.autoUpdate': false,
  'extensions.ignoreRecommendations': true,
  'workbench.startupEditor': 'none',
  'workbench.tips.enabled': false,
  'workbench.welcomePage.walkthroughs.openOnInstall': false,
  'workbench.enableExperiments': false,
  'workbench.secondarySideBar.defaultVisibility': 'hidden',
  'security.workspace.trust.enabled': false,
  'chat.disableAIFeatures': true,
  'git.enabled': false,
  'window.autoDetectColorScheme': false,
  'files.autoSave': 'off',
};

/** Writes the settings of a new user folder; one that has settings keeps them. */
export function writeSettings(userFolder, more = {}) {
  const file = path.join(userFolder, 'User/settings.json');
  if (existsSync(file)) return;
  mkdirSync(path.dirname(file), { recursive: true });
  writeFileSync(file, JSON.stringify({ ...quiet, ...more }));
}
