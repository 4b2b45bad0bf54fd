/** A number in plain decimals, never `1e-7`. */
export function decimal(quantity: number): string {
  if (Number.isInteger(quantity) && quantity < 1e15) return String(quantity);
  return quantity.toLocaleString('en-US', { useGrouping: false, maximumFractionDigits: 20 });
}
