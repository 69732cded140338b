import type { AdvisoryDetail } from "@pith/contract";
import { type Message, type Reader, render } from "@pith/rules";
import { AdviceTable } from "../../ui/AdviceTable.tsx";
import { Row } from "../../ui/Row.tsx";

interface Props {
  answer: AdvisoryDetail["answerOfRule"];
  reader: Reader;
}

/** An advice's tables for the farmer: there when they are wanted, out of the way of what is to be done now. */
export function FieldTables({ answer, reader }: Props) {
  const tables = (answer.kind === "advice" && answer.table) || [];
  if (tables.length === 0) return null;
  return (
    <Row wide>
      {tables.map((table) => (
        <details key={table.id}>
          <summary>{render(table.title as Message, reader)}</summary>
          <AdviceTable table={table} reader={reader} />
        </details>
      ))}
    </Row>
  );
}
