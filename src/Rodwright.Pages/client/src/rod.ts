export const attach = () => {};
