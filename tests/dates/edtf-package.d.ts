declare module 'edtf' {
  /** What the tests use of the package: bounds in milliseconds, infinite or null where open or unknown. */
  interface ParsedDate {
    type: string;
    min: number | null;
    max: number | null;
  }
  export default function edtf(text: string, options?: { level?: number }): ParsedDate;
}
