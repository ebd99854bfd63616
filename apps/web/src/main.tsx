import { RouterProvider } from "@tanstack/react-router";
import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import { startSync } from "./device/device.js";
import { keepApp } from "./device/update.js";
import { SettingsProvider } from "./settings/settings-context.js";
import { router } from "./shell/router.js";
import { sweepSpools } from "./worker/listening/spool-folder.js";
import "./style/tokens.css";
import "./style/base.css";

startSync();
void keepApp();
void sweepSpools();

const place = document.getElementById("app");
if (place)
  createRoot(place).render(
    <StrictMode>
      <SettingsProvider>
        <RouterProvider router={router} />
      </SettingsProvider>
    </StrictMode>,
  );
