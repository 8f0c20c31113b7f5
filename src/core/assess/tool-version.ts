/** Version of the tool; stands in every Assessment. */
export const TOOL_VERSION = '0.1.0';
