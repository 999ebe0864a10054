/** Line: today's batches. */
export function LinePlace() {
  return (
    <div className="page stack">
      <h1>Line</h1>
    </div>
  );
}
