/**
 * For each row the column it gets, every column at most once, so that the total cost is least: the assignment
 * problem with at least as many columns as rows, whatever the costs. Needed where two figures are matched at once
 * and no order helps.
 *
 * The Hungarian method by shortest augmenting paths with row and column prices (Kuhn 1955, Munkres 1957; in this
 * form Jonker and Volgenant 1987): rows join one at a time, each by the cheapest chain of swaps. Time grows as rows
 * squared times columns.
 */
export function assignLeastCost(
  rows: number,
  columns: number,
  cost: (row: number, column: number) => number,
): number[] {
  const free = -1;
  const costs = new Float64Array(rows * columns);
  for (let row = 0; row < rows; row += 1) {
    for (let column = 0; column < columns; column += 1) costs[row * columns + column] = cost(row, column);
  }
  // Column number `columns` is a stand-in that holds the row about to join.
  const rowOf = new Int32Array(columns + 1).fill(free);
  const rowPrice = new Float64Array(rows);
  const columnPrice = new Float64Array(columns + 1);
  for (let row = 0; row < rows; row += 1) {
    const distance = new Float64Array(columns).fill(Number.POSITIVE_INFINITY);
    const cameFrom = new Int32Array(columns).fill(columns);
    const settled = new Uint8Array(columns + 1);
    let here = columns;
    rowOf[here] = row;
    while (rowOf[here] !== free) {
      settled[here] = 1;
      const from = rowOf[here]!;
      let nearest = free;
      for (let column = 0; column < columns; column += 1) {
        if (settled[column]) continue;
        const reach = costs[from * columns + column]! - rowPrice[from]! - columnPrice[column]!;
        if (reach < distance[column]!) {
          distance[column] = reach;
          cameFrom[column] = here;
        }
        if (nearest === free || distance[column]! < distance[nearest]!) nearest = column;
      }
      const step = distance[nearest]!;
      for (let column = 0; column <= columns; column += 1) {
        if (settled[column]) {
          rowPrice[rowOf[column]!]! += step;
          columnPrice[column]! -= step;
        } else if (column < columns) distance[column]! -= step;
      }
      here = nearest;
    }
    while (here !== columns) {
      const before = cameFrom[here]!;
      rowOf[here] = rowOf[before]!;
      here = before;
    }
  }
  const chosen = new Array<number>(rows);
  for (let column = 0; column < columns; column += 1) {
    if (rowOf[column] !== free) chosen[rowOf[column]!] = column;
  }
  return chosen;
}
