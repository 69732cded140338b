"use client";

export { Broken as default } from "../../ui/Broken.tsx";
