// The engine in this browser, asked about the setup of the page. It is loaded when it is needed first.

export class Engine {
  constructor(data) {
    this.data = data;
  }

  /**
   * @param part what is wanted, such as "now"
   * @param asked what the request has beside the setup
   * @returns the part; or {problems}, each with a pointer and a message
   */
  async ask(part, asked) {
    const { answer } = await import("./engine.js");
    const { document, language, lengths, stops, phrases } = this.data;
    const told = JSON.parse(answer(JSON.stringify({ document, language, lengths, stops, phrases, want: [part], ...asked })));
    return told.problems.length > 0 ? { problems: told.problems } : told[part];
  }
}
