# Where an installed Matwright keeps its parts.
install(DIRECTORY resources/positions resources/catalogue resources/screening resources/demo
        DESTINATION ${CMAKE_INSTALL_DATADIR}/matwright)
