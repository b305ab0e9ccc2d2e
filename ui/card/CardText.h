#pragma once

#include "core/handout/Card.h"

#include <QString>

namespace matwright {

// The class as a table, one line a step. RFC 4180: CRLF, quotes doubled, a header line, UTF-8.
QString cardCsv(const Card& card);
// The class as a Markdown document with one table a section.
QString cardMarkdown(const Card& card);

} // namespace matwright
