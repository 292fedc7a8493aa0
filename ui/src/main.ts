// The entry: sets the theme that the owner chose, then draws the face.

import { mount } from 'svelte';
import './fonts.css';
import './tokens.css';
import './base.css';
import './forms.css';
import './parts/plot/plot.css';
import './print.css';
import App from './App.svelte';
import { applyTheme, keptTheme } from './theme';
import { language } from './words';

applyTheme(keptTheme());
document.documentElement.lang = language;

const target = document.getElementById('face');
if (target) mount(App, { target });
