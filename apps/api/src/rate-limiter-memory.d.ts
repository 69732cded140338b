/** The one part that is used: the library's own index asks for modules that an edge runtime has not. */
declare module "rate-limiter-flexible/lib/RateLimiterMemory.js" {
  import { RateLimiterMemory } from "rate-limiter-flexible";
  export default RateLimiterMemory;
}
