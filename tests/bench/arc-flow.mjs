/**
 * The plain arc-flow model of the one-length problem: a path from 0 to the stick's end is a stick,
 * an arc a piece; every piece as often as it is asked for, the fewest paths.
 */
export function solveArcFlow(highs, { capacity, sizes }, seconds) {
  const begun = performance.now();
  const kinds = [...new Set(sizes)].sort((a, b) => b - a);
  const demand = kinds.map((size) => sizes.filter((one) => one === size).length);
  const arcs = [];
  const reached = new Set([0]);
  kinds.forEach((size, kind) => {
    for (const from of [...reached].sort((a, b) => a - b)) {
      let at = from;
      for (let copy = 0; copy < demand[kind] && at + size <= capacity; copy += 1) {
        arcs.push([at, at + size, kind]);
        at += size;
        reached.add(at);
      }
    }
  });
  const distinct = [...new Map(arcs.map((arc) => [arc.join(), arc])).values()];
  const nodes = [...reached].sort((a, b) => a - b);
  for (const [at, node] of nodes.entries()) {
    if (at > 0) distinct.push([node, nodes[at + 1] ?? capacity, -1]);
  }
  if (nodes.at(-1) !== capacity) nodes.push(capacity);
  const row = new Map(nodes.map((node, at) => [node, at]));
  const rows = nodes.length + kinds.length;
  const starts = [0];
  const indices = [];
  const values = [];
  const used = distinct.filter(([from, to]) => from !== to);
  for (const [from, to, kind] of used) {
    indices.push(row.get(from), row.get(to));
    values.push(-1, 1);
    if (kind >= 0) {
      indices.push(nodes.length + kind);
      values.push(1);
    }
    starts.push(indices.length);
  }
  // The last column is the count of paths: from the stick's end back to 0.
  indices.push(row.get(0), row.get(capacity));
  values.push(1, -1);
  starts.push(indices.length);
  const columns = used.length + 1;
  const least = [...nodes.map(() => 0), ...demand];
  const most = [...nodes.map(() => 0), ...demand.map(() => highs.infinity)];
  const model = highs.createModel({
    numCols: columns,
    numRows: rows,
    colCost: Float64Array.from({ length: columns }, (_, at) => (at === columns - 1 ? 1 : 0)),
    colLower: new Float64Array(columns),
    colUpper: new Float64Array(columns).fill(highs.infinity),
    rowLower: Float64Array.from(least),
    rowUpper: Float64Array.from(most),
    integrality: new Int32Array(columns).fill(highs.constants.variableType.integer),
    matrix: {
      format: 'csc',
      numRows: rows,
      numCols: columns,
      starts: Int32Array.from(starts),
      indices: Int32Array.from(indices),
      values: Float64Array.from(values),
    },
  });
  try {
    model.options.set({ output_flag: false, time_limit: seconds, mip_rel_gap: 0 });
    model.run();
    const isOptimal = model.getModelStatus() === highs.constants.modelStatus.optimal;
    const sticks = isOptimal ? Math.round(model.getObjectiveValue()) : undefined;
    return { sticks, isOptimal, seconds: (performance.now() - begun) / 1000 };
  } finally {
    model.dispose();
  }
}
