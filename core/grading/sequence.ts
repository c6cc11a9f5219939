/**
 * Puts lines in an order in which each comes after those it needs, and finds the circles among them. It works
 * on plain indexes and knows no lines.
 */

export interface Sequence {
  /** Indexes, each after all it needs, circles apart. */
  readonly order: readonly number[];
  /** For each index the members of the circle it belongs to (itself among them), or null. */
  readonly circles: readonly (readonly number[] | null)[];
}

interface Visit {
  readonly node: number;
  next: number;
}

/**
 * Sequence of the graph in which `needs[i]` lists what i needs. Strongly connected components (Tarjan 1972)
 * with a stack of its own, so that a very long chain of lines cannot exhaust the call stack.
 */
export function sequenceOf(needs: readonly (readonly number[])[]): Sequence {
  const size = needs.length;
  const found = new Int32Array(size).fill(-1);
  const low = new Int32Array(size);
  const waiting = new Uint8Array(size);
  const stack: number[] = [];
  const order: number[] = [];
  const circles = new Array<readonly number[] | null>(size).fill(null);
  let counter = 0;
  const begin = (node: number): Visit => {
    found[node] = low[node] = counter++;
    stack.push(node);
    waiting[node] = 1;
    return { node, next: 0 };
  };
  const finish = (node: number) => {
    if (low[node] !== found[node]) return;
    const members = stack.splice(stack.lastIndexOf(node));
    for (const member of members) waiting[member] = 0;
    order.push(...members);
    if (members.length === 1 && !needs[node]!.includes(node)) return;
    const circle = members.sort((a, b) => a - b);
    for (const member of circle) circles[member] = circle;
  };
  for (let root = 0; root < size; root++) {
    if (found[root] !== -1) continue;
    const visits = [begin(root)];
    while (visits.length > 0) {
      const visit = visits.at(-1)!;
      const target = needs[visit.node]![visit.next++];
      if (target === undefined) {
        visits.pop();
        finish(visit.node);
        const parent = visits.at(-1);
        if (parent) low[parent.node] = Math.min(low[parent.node]!, low[visit.node]!);
      } else if (found[target] === -1) visits.push(begin(target));
      else if (waiting[target]) low[visit.node] = Math.min(low[visit.node]!, found[target]!);
    }
  }
  return { order, circles };
}
