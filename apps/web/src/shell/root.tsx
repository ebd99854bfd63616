import { Outlet } from "@tanstack/react-router";
import { ConnectionNotice } from "./connection-notice.js";
import styles from "./root.module.css";
import { UpdateNotice } from "./update-notice.js";

/** Around every page. */
export const Root = () => (
  <div className={styles.root}>
    <div>
      <UpdateNotice />
      <ConnectionNotice />
    </div>
    <Outlet />
  </div>
);
