import { mount } from 'svelte';
import App from './App.svelte';
import './app.css';
import './desk.css';
import { offline } from './offline.svelte';

addEventListener('vite:preloadError', ({ payload }) => offline.miss(payload));
addEventListener('unhandledrejection', (event) => {
  if (offline.hasTold(event.reason)) event.preventDefault();
});
mount(App, { target: document.getElementById('app')! });
if (import.meta.env.PROD) void offline.keep();
