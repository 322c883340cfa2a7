/** Under this all is kept in a browser: its database, and what a closing page leaves beside it. */
export const DATABASE = 'paper-reef';
