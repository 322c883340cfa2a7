import { mount } from 'svelte';
import App from './App.svelte';
import './app.css';
import './desk.css';
import { offline } from './offline.svelte';

mount(App, { target: document.getElementById('app')! });
if (import.meta.env.PROD) void offline.keep();
