// What the browser keeps: jobs, shop sheets, a county's files. Written at once, so that a
// tab that is killed loses nothing. A job is kept as its text, so that it is saved as it
// was opened; what was is kept for undoing.
const PREFIX = "eavemark.", UNDO_MOST = 40;

const read = (key, none) => {
  try {
    return JSON.parse(localStorage.getItem(PREFIX + key)) ?? none;
  } catch {
    return none;
  }
};
const write = (key, value) => {
  try {
    localStorage.setItem(PREFIX + key, JSON.stringify(value));
    return true;
  } catch {
    return false;
  }
};

export const store = {
  jobs: () => read("jobs", []),
  current: () => read(`job.${read("current", "")}`, null),
  choose: (id) => write("current", id),
  // text, and what was last saved to a file; id is new for a new job.
  add(text, saved) {
    const id = `${Date.now().toString(36)}${Math.random().toString(36).slice(2, 6)}`;
    write(`job.${id}`, { id, text, saved, undo: [], drafts: {} });
    write("jobs", [...read("jobs", []), id]);
    write("current", id);
    return id;
  },
  job: (id) => read(`job.${id}`, null),
  put: (job) => write(`job.${job.id}`, job),
  change(text) {
    const job = store.current();
    const undo = [...job.undo, job.text].slice(-UNDO_MOST);
    return store.put({ ...job, text, undo, drafts: {} });
  },
  undo() {
    const job = store.current();
    if (job.undo.length > 0)
      store.put({ ...job, text: job.undo.at(-1), undo: job.undo.slice(0, -1) });
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
    localStorage.removeItem(`${PREFIX}job.${id}`);
    write("jobs", read("jobs", []).filter((other) => other !== id));
  },
  shops: () => read("shops", {}),
  addShop: (name, text) => write("shops", { ...read("shops", {}), [name]: text }),
  county: () => read("county", {}),
  setCounty: (files) => write("county", files),
};
