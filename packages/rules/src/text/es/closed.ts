/** What closed says, in Spanish. */
export const closed: Record<string, string> = {
  "closed.step":
    "Espere primero: la cama está cerrada tras una aplicación hasta el {day}, {time}. Nadie entra antes, ni para esto ni para nada más.",
};
