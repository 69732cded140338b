import { Masthead } from "../ui/Masthead.tsx";
import { NothingHere } from "../ui/NothingHere.tsx";

export default function NotFound() {
  return (
    <>
      <Masthead seat={null} />
      <main id="main">
        <NothingHere />
      </main>
    </>
  );
}
