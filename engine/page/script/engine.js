// The engine in WebAssembly: texts go in, texts come out (wasm/page.c).
export const CALLS = ["check", "questions", "card", "order", "places", "schema", "explain",
  "proof", "changes", "screen", "shop"];
export const FORMS = ["text", "json", "line", "html"];
export const ALL = 2, DRAWINGS = 8; // of eavemark_report_option
const PARTS = ["name", "job", "before", "shop", "stage", "place", "day", "words"];
const NO_FILE = 8; // the answer to whatever asks for one

// What wasi-libc asks of its host. There are no files and nothing is printed: only the
// clock is there, by which a rule that does not end is stopped.
function hostOf(memory) {
  const clock = (kind, precision, at) => {
    memory().setBigUint64(at, BigInt(Math.round(performance.now() * 1e6)), true);
    return 0;
  };
  const known = { clock_time_get: clock,
    proc_exit: (status) => { throw new Error(`the engine stopped: ${status}`); } };
  return new Proxy(known, { get: (calls, name) => calls[name] ?? (() => NO_FILE) });
}

export class Engine {
  // bytes of engine.wasm, of the pack of rules and places, and of what the build made of it.
  static async load(bytes, pack, made) {
    const engine = new Engine();
    const module = await WebAssembly.compile(bytes);
    const host = hostOf(() => new DataView(engine.wasm.memory.buffer));
    const imports = {};
    for (const wanted of WebAssembly.Module.imports(module))
      (imports[wanted.module] ??= {})[wanted.name] = host[wanted.name];
    engine.wasm = (await WebAssembly.instantiate(module, imports)).exports;
    engine.wasm._initialize();
    engine.wasm.page_set_home(engine.put(pack), pack.length);
    engine.wasm.page_set_made(engine.put(made), made.length);
    engine.wasm.page_open();
    return engine;
  }

  put(bytes) {
    const at = this.wasm.page_memory(bytes.length);
    if (at === 0) throw new Error("out of memory");
    new Uint8Array(this.wasm.memory.buffer).set(bytes, at);
    return at;
  }

  putText(text) {
    return this.put(new TextEncoder().encode(`${text}\0`));
  }

  getText(at) {
    if (at === 0) return null;
    const bytes = new Uint8Array(this.wasm.memory.buffer);
    return new TextDecoder().decode(bytes.subarray(at, bytes.indexOf(0, at)));
  }

  // A file of a county, laid over those that came with the page.
  layOver(path, text) {
    const bytes = new TextEncoder().encode(text);
    const at = this.put(bytes), name = this.putText(path);
    const done = this.wasm.page_lay_over(name, at, bytes.length) !== 0;
    this.wasm.page_forget(at);
    this.wasm.page_forget(name);
    this.wasm.page_open();
    return done;
  }

  // { status, report, problems, questions } of one call; request: texts by the names in PARTS.
  call(what, request, form = "json", options = 0) {
    const place = new DataView(this.wasm.memory.buffer);
    const at = this.wasm.page_request();
    const held = PARTS.map((part) => request[part] == null ? 0 : this.putText(request[part]));
    held.forEach((pointer, i) => place.setUint32(at + 4 * i, pointer, true));
    const status = this.wasm.page_call(CALLS.indexOf(what), FORMS.indexOf(form), options);
    held.forEach((pointer) => pointer === 0 || this.wasm.page_forget(pointer));
    return { status, report: this.getText(this.wasm.page_report()),
      problems: this.getText(this.wasm.page_problems()) ?? "",
      questions: this.getText(this.wasm.page_questions()) };
  }
}
