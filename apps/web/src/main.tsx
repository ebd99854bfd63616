import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import "./style/tokens.css";
import "./style/base.css";

const place = document.getElementById("app");
if (place) createRoot(place).render(<StrictMode />);
