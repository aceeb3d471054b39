// What the browser keeps: jobs, shop sheets, a county's files. Written at once, so that a
// tab that is killed loses nothing. A job is kept as its text, so that it is saved as it
// was opened; each text that it had is kept by a number, for undoing.
const PREFIX = "eavemark.", UNDO_MOST = 40;

const read = (key, none) => {
  try {
    return JSON.parse(localStorage.getItem(PREFIX + key)) ?? none;
  } catch {
    return none;
  }
};

// What there was no room for; said to the user until it is there.
const unkept = new Map();
const write = (key, value) => {
  unkept.set(key, value);
  try {
    for (const [one, waiting] of unkept) {
      localStorage.setItem(PREFIX + one, JSON.stringify(waiting));
      unkept.delete(one);
    }
  } catch { /* it waits for room */ }
};
const forget = (key) => {
  localStorage.removeItem(PREFIX + key);
  unkept.delete(key);
};
const readBack = (key, none) => unkept.get(key) ?? read(key, none);

export const store = {
  full: () => unkept.size > 0,
  jobs: () => readBack("jobs", []),
  current: () => store.job(readBack("current", "")),
  choose: (id) => write("current", id),
  // text, and what was last saved to a file; id is new for a new job.
  add(text, saved) {
    const id = `${Date.now().toString(36)}${Math.random().toString(36).slice(2, 6)}`;
    store.put({ id, text, saved, undo: [], drafts: {} });
    write("jobs", [...store.jobs(), id]);
    write("current", id);
    return id;
  },
  job: (id) => readBack(`job.${id}`, null),
  put: (job) => write(`job.${job.id}`, job),
  change(text) {
    const job = store.current();
    if (text === job.text) return;
    const step = (job.undo.at(-1) ?? 0) + 1, undo = [...job.undo, step];
    write(`undo.${job.id}.${step}`, job.text);
    while (undo.length > UNDO_MOST) forget(`undo.${job.id}.${undo.shift()}`);
    store.put({ ...job, text, undo, drafts: {} });
  },
  undo() {
    const job = store.current(), key = `undo.${job.id}.${job.undo.at(-1)}`;
    store.put({ ...job, text: readBack(key, job.text), undo: job.undo.slice(0, -1), drafts: {} });
    forget(key);
  },
  saved() {
    const job = store.current();
    store.put({ ...job, saved: job.text });
  },
  draft(pointer, words) {
    const job = store.current();
    store.put({ ...job, drafts: { ...job.drafts, [pointer]: words } });
  },
  remove(id) {
    for (const step of store.job(id)?.undo ?? []) forget(`undo.${id}.${step}`);
    forget(`job.${id}`);
    write("jobs", store.jobs().filter((other) => other !== id));
  },
  shops: () => readBack("shops", {}),
  // By the path that a job names it with, or by the file's own name.
  shop: (named) => store.shops()[named] ?? store.shops()[String(named).split("/").at(-1)],
  addShop: (name, text) => write("shops", { ...store.shops(), [name]: text }),
  removeShop: (name) => write("shops",
    Object.fromEntries(Object.entries(store.shops()).filter(([other]) => other !== name))),
  county: () => readBack("county", {}),
  setCounty: (files) => write("county", files),
};
