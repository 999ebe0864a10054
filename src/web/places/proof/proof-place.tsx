/** Proof: what can be shown. */
export function ProofPlace() {
  return (
    <div className="page stack">
      <h1>Proof</h1>
    </div>
  );
}
