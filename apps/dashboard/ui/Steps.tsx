export function Steps({ steps }: { steps: string[] }) {
  return (
    <ol className="steps">
      {steps.map((step) => (
        <li key={step}>
          <span>{step}</span>
        </li>
      ))}
    </ol>
  );
}
