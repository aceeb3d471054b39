// JSON pointers (RFC 6901): facts of a job, and what the catalogue says of them.
const names = (pointer) => pointer.split("/").slice(1)
  .map((name) => name.replace(/~1/g, "/").replace(/~0/g, "~"));
const isIndex = (name) => /^\d+$/.test(name);

export function getAt(tree, pointer) {
  return names(pointer).reduce((node, name) => node == null ? undefined : node[name], tree);
}

// A copy of the tree with that fact; undefined takes it away.
export function setAt(tree, pointer, value) {
  const copy = structuredClone(tree), path = names(pointer), last = path.pop();
  let node = copy;
  path.forEach((name, i) => {
    if (node[name] == null) {
      if (value === undefined) return;
      node[name] = isIndex(path[i + 1] ?? last) ? [] : {};
    }
    node = node[name];
  });
  if (value !== undefined) node[last] = value;
  else if (Array.isArray(node)) node.splice(Number(last), 1);
  else delete node[last];
  return copy;
}

// The catalogue's entry for a fact, of a JSON Schema.
export function entryAt(schema, pointer) {
  return names(pointer).reduce((entry, name) => entry == null ? undefined
    : isIndex(name) && entry.items ? entry.items : entry.properties?.[name], schema);
}

// Every fact that is not made of others: [pointer, value].
export function leavesOf(tree, at = "") {
  if (Array.isArray(tree) ? tree.every((item) => typeof item !== "object") : typeof tree !== "object")
    return [[at, tree]];
  if (tree === null) return [];
  return Object.entries(tree).flatMap(([name, value]) =>
    leavesOf(value, `${at}/${name.replace(/~/g, "~0").replace(/\//g, "~1")}`));
}
