#include "ui/text/Translations.h"

#include <QCoreApplication>
#include <QLocale>
#include <QTranslator>

static void initialiseTranslationResource() { Q_INIT_RESOURCE(matwright_translations); }

namespace matwright {

void loadTranslations(const QLocale& locale) {
  initialiseTranslationResource();
  const QString folder = QStringLiteral(":/translations");
  for (const QLocale& wanted : {QLocale(QLocale::English), locale}) {
    auto* translator = new QTranslator(QCoreApplication::instance());
    if (translator->load(wanted, QStringLiteral("matwright"), QStringLiteral("_"), folder))
      QCoreApplication::installTranslator(translator);
    else
      delete translator;
  }
}

} // namespace matwright
