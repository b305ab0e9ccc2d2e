#pragma once

class QLocale;

namespace matwright {

// Puts the texts of the program into the language of the locale where there is a translation, else into English (whose
// plural forms are a translation too). Needs the application; translations stay for its life.
void loadTranslations(const QLocale& locale);

} // namespace matwright
