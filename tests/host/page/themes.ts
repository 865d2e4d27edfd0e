/** The four kinds of theme: the class that an editor puts on a page, and the colours of its own default themes. */
export type Theme = 'light' | 'dark' | 'high contrast' | 'high contrast light';

interface Colours {
  readonly kind: string;
  readonly colours: Readonly<Record<string, string>>;
}

const FONT = { 'font-family': 'sans-serif', 'font-size': '13px' };

/** Default Light Modern, Default Dark Modern and both High Contrast themes, as VS Code 1.95 ships them (from memory). */
export const THEMES: Readonly<Record<Theme, Colours>> = {
  light: {
    kind: 'vscode-light',
    colours: {
      ...FONT,
      'editor-foreground': '#3b3b3b',
      'editor-background': '#ffffff',
      descriptionForeground: '#3b3b3b',
      'widget-border': '#e5e5e5',
      'charts-orange': '#d18616',
      'charts-red': '#e51400',
      'charts-yellow': '#bf8803',
      'editor-findMatchHighlightBackground': '#ea5c0055',
      focusBorder: '#005fb8',
      'dropdown-background': '#ffffff',
      'dropdown-foreground': '#3b3b3b',
      'dropdown-border': '#cecece',
      'icon-foreground': '#3b3b3b',
      'textLink-foreground': '#005fb8',
      'inputOption-activeBorder': '#005fb8',
      'inputOption-activeBackground': '#bed6ed',
      'inputOption-activeForeground': '#000000',
      'editorWarning-foreground': '#bf8803',
    },
  },
  dark: {
    kind: 'vscode-dark',
    colours: {
      ...FONT,
      'editor-foreground': '#cccccc',
      'editor-background': '#1f1f1f',
      descriptionForeground: '#9d9d9d',
      'widget-border': '#313131',
      'charts-orange': '#d18616',
      'charts-red': '#f14c4c',
      'charts-yellow': '#cca700',
      'editor-findMatchHighlightBackground': '#ea5c0055',
      focusBorder: '#0078d4',
      'dropdown-background': '#313131',
      'dropdown-foreground': '#cccccc',
      'dropdown-border': '#3c3c3c',
      'icon-foreground': '#cccccc',
      'textLink-foreground': '#4daafc',
      'inputOption-activeBorder': '#2488db',
      'inputOption-activeBackground': '#2489db82',
      'inputOption-activeForeground': '#ffffff',
      'editorWarning-foreground': '#cca700',
    },
  },
  'high contrast': {
    kind: 'vscode-high-contrast',
    colours: {
      ...FONT,
      'editor-foreground': '#ffffff',
      'editor-background': '#000000',
      contrastBorder: '#6fc3df',
      contrastActiveBorder: '#f38518',
      focusBorder: '#f38518',
      'dropdown-background': '#000000',
      'dropdown-foreground': '#ffffff',
      'dropdown-border': '#6fc3df',
      'icon-foreground': '#ffffff',
      'textLink-foreground': '#21a6ff',
    },
  },
  'high contrast light': {
    kind: 'vscode-high-contrast-light',
    colours: {
      ...FONT,
      'editor-foreground': '#292929',
      'editor-background': '#ffffff',
      contrastBorder: '#0f4a85',
      contrastActiveBorder: '#006bbd',
      focusBorder: '#006bbd',
      'dropdown-background': '#ffffff',
      'dropdown-foreground': '#292929',
      'dropdown-border': '#0f4a85',
      'icon-foreground': '#292929',
      'textLink-foreground': '#0f4a85',
    },
  },
};
