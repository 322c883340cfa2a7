import { mount } from 'svelte';
import '../../src/app/app.css';
import '../../src/app/desk.css';
import Gallery from './Gallery.svelte';

/** For developers and tests: `npm run dev`, then /tests/gallery/. No build has it. */
mount(Gallery, { target: document.getElementById('app')! });
