import { NothingHere } from "../../ui/NothingHere.tsx";

export default function NotFound() {
  return <NothingHere />;
}
