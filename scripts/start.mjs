import { build, preview } from 'vite';

await build({ logLevel: 'warn' });
const server = await preview();
server.printUrls();

// Trap: npm passes a signal to the shell between it and this process, and the shell does not.
const shell = process.ppid;
setInterval(() => {
  if (process.ppid !== shell) process.exit();
}, 500).unref();
