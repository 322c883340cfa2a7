/** Lets messages that wait at the door (a cancel, a newer job) come in between two slices. */
export const letMessagesIn = (): Promise<void> =>
  new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      resolve();
    };
    port2.postMessage(0);
  });
