// Whether another window has the same setup open with changes that are not saved.

export class Windows {
  /**
   * @param name of what both would keep
   * @param tab this window's own name
   * @param isUnsaved says whether this window has changes
   */
  constructor(name, tab, isUnsaved) {
    if (!globalThis.BroadcastChannel) {
      return;
    }
    this.channel = new BroadcastChannel(name);
    this.tab = tab;
    this.channel.addEventListener("message", ({ data }) => {
      if (data.asks && isUnsaved()) {
        this.channel.postMessage({ answers: data.asks });
      } else if (data.answers === tab) {
        this.heard?.();
      }
    });
  }

  // Is told if there is one.
  ask(heard) {
    this.heard = heard;
    this.channel?.postMessage({ asks: this.tab });
  }
}
