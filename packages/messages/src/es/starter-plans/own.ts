import type { own as english } from '../../en/starter-plans/own';
import { translated } from '../../translated';

export const own = translated<typeof english>()({
  'killed-by-acid-and-dryness': 'Se eliminan con acidez y sequedad: “Fermentación”, “Actividad de agua”.',
  'trichinae-trichinella-spiralis-in-pork': 'Triquinas (Trichinella spiralis) en el cerdo',
  'the-suppliers-letter-on-file':
    'La carta archivada del proveedor dice que los cerdos vienen de piaras libres de ellas. Sin esa carta trátelo como probable: este producto nunca se calienta.',
  'letter-of-the-supplier-otherwise':
    'Carta del proveedor; si no, un punto de control propio, como cerdo congelado el tiempo suficiente (entre los límites publicados, sin confirmar).',
  fermenting: 'Fermentación',
  'toxin-of-staphylococcus-aureus-formed': 'Toxina de Staphylococcus aureus, formada antes de que haya acidez',
  'a-warm-chamber-suits-it': 'Una cámara caliente le conviene tanto como al cultivo iniciador, y nada posterior destruye su toxina.',
  'by-fermentation': 'Fermentación.',
  'survival-of-salmonella-escherichia-coli': 'Supervivencia de Salmonella, Escherichia coli O157:H7 y otras E. coli productoras de toxina',
  'they-stand-acid-better-than':
    'Resisten la acidez mejor que los demás. Una fermentación lenta deja más de ellas de las que el secado puede eliminar.',
  'fermentation-then-drying-as-validated': 'Fermentación y después secado, validados juntos para 5 log.',
  drying: 'Secado',
  'survival-of-salmonella-e-coli':
    'Supervivencia de Salmonella, E. coli O157:H7 y Listeria monocytogenes en un producto que no está bastante seco',
  'a-dry-rim-and-a': 'Un borde seco y una cámara llena retrasan el secado; el ojo no ve el centro.',
  'by-water-activity': 'Actividad de agua.',
  'mould-that-is-not-the': 'Moho que no es del cultivo, y sus toxinas',
  'humidity-is-led-down-step': 'La humedad se baja paso a paso, y lo que crece se mira cada día y se cepilla.',
  'looking-over-care-of-the': 'Inspección visual; cuidado de la cámara.',
  'listeria-monocytogenes-from-surfaces-and-hands': 'Listeria monocytogenes de superficies y manos después del secado',
  'storage-of-finished-product': 'Almacenamiento del producto terminado',
  'growth-of-staphylococcus-aureus-and': 'Crecimiento de Staphylococcus aureus y de moho donde vuelve la humedad',
  'nothing-leaves-drying-above-the':
    'Nada sale del secado por encima del límite del punto de control “Actividad de agua”; el almacén es seco y fresco.',
  'water-activity-packages-looked-over': 'Actividad de agua; paquetes revisados.',
  'packages-damaged-on-the-way': 'Paquetes dañados en el camino',
  'cases-are-closed-and-the': 'Las cajas van cerradas y el camino es corto; el producto no necesita frío.',
  'looking-over-before-loading': 'Inspección visual antes de cargar.',
  'cooked-and-chilled-dish': 'Platillo cocido y enfriado',
  'a-stew-a-soup-or':
    'Un guiso, una sopa o una salsa con carne, cocido en marmita, enfriado en charolas poco hondas o en abatidor y empacado frío. Para una cocina o un servicio de banquetes bajo el Food Code.',
  'to-be-reheated-and-served': 'Para recalentar y servir al público en general; se conserva refrigerado y se come dentro de sus días.',
  'weighing-ingredients': 'Pesaje de ingredientes',
  'stones-string-and-splinters-in': 'Piedras, cuerdas y astillas en verduras y legumbres',
  'they-are-washed-and-looked': 'Se lavan y se revisan.',
  cooking: 'Cocción',
  'survival-of-salmonella-listeria-monocytogenes': 'Supervivencia de Salmonella, Listeria monocytogenes y otros patógenos',
  'large-pieces-and-thick-sauces':
    'Las piezas grandes y las salsas espesas se calientan despacio, y lo más frío no está donde se revuelve.',
  'by-cooking': 'Cocción.',
  chilling: 'Enfriamiento',
  'growth-of-clostridium-perfringens-and':
    'Crecimiento de Clostridium perfringens y Bacillus cereus a partir de esporas que sobreviven a la cocción',
  'thick-dishes-in-deep-pans': 'Los platillos espesos en recipientes hondos siguen calientes por horas.',
  'by-chilling': 'Enfriamiento.',
  'cold-storage-of-finished-product': 'Almacenamiento en frío del producto terminado',
  'growth-of-listeria-monocytogenes-and-of': 'Crecimiento de Listeria monocytogenes y de Clostridium botulinum',
  'the-dish-has-no-salt': 'El platillo no tiene sal, acidez ni cura que los contenga: solo hay frío y tiempo.',
  'by-cold-storage': 'Almacenamiento en frío.',
  'pathogens-that-survive-in-the': 'Patógenos que sobreviven en la parte más fría del platillo.',
  'temperature-in-the-thickest-piece': 'Temperatura en el pedazo de carne más grueso, del medio de la marmita.',
  'stir-wait-then-hold-the': 'Revolver, esperar y mantener la sonda en medio del pedazo hasta que quede estable.',
  'every-kettle-from-the-time': 'Cada marmita: desde que hierve a fuego lento hasta que en todas partes se pasan 165 °F (74 °C).',
  'the-cook': 'El cocinero.',
  'go-on-cooking-stir-and':
    'Siga cociendo, revuelva y mida de nuevo en varios lugares. No se porciona nada antes de que se cumpla el límite. Si falló la marmita, pase el platillo de inmediato a otra o decomíselo. Encuentre la causa, escríbala y observe la próxima marmita desde el comienzo.',
  'probes-checked-in-ice-water':
    'Sondas verificadas en agua con hielo. El chef observa una cocción por semana. Los registros se revisan antes del envío.',
  'growth-from-spores-that-survive': 'Crecimiento a partir de esporas que sobreviven a la cocción.',
  'temperature-in-the-middle-of': 'Temperatura en medio de la charola más gruesa.',
  'probe-left-in-the-middle':
    'Sonda fija en medio de la charola; charolas de 2 in (5 cm) de hondo como máximo (práctica común, sin fuente).',
  'every-quarter-of-an-hour':
    'Cada cuarto de hora hasta 70 °F (21 °C), después por lo menos cada media hora hasta 41 °F (5 °C) (práctica común, sin fuente).',
  'the-cook-or-the-kitchen': 'El cocinero o el ayudante de cocina de turno.',
  'while-the-first-two-hours':
    'Mientras corren las primeras dos horas: charolas menos hondas, baño de hielo, más aire, o recaliente a 165 °F (74 °C) y enfríe de nuevo. Una vez que no se cumple una etapa, retenga el lote y decomíselo, salvo que una autoridad de procesos respalde otro uso. Encuentre la causa, lleve el enfriador a su temperatura y observe de cerca el próximo lote.',
  'probes-checked-in-ice-water-records': 'Sondas verificadas en agua con hielo. Los registros se revisan antes del envío.',
  'notes-cook-chill':
    '{caution} 165 °F (74 °C) es el límite para aves y alimentos rellenos y cubre cualquier otra carne; los límites para carne entera y molida están entre los publicados. Fecha: a 41 °F (5 °C) o menos, 7 días como máximo, y el día de la preparación es el día 1 (Food Code 3-501.17). Empacar caliente o al vacío es otro proceso: vea Food Code 3-502.11 y 3-502.12(D) antes de hacerlo.',
  'soup-or-sauce-stirred-and': 'Sopa o salsa, revuelta y enfriada',
  'a-soup-or-a-sauce':
    'Una sopa o una salsa sin pedazos, revuelta o bombeada mientras se cuece en su marmita, enfriada en charolas poco hondas y empacada fría. Para una cocina o un servicio de banquetes bajo el Food Code. Si lleva pedazos de carne, tome el platillo cocido y enfriado.',
  'pathogens-that-survive-where-the': 'Patógenos que sobreviven donde la marmita está más fría.',
  'temperature-in-the-middle-of-the': 'Temperatura en medio de la marmita, y en su pared donde no la calienta el vapor.',
  'stir-or-pump-all-of': 'Revolver o bombear todo y mantener la sonda dentro hasta que quede estable; cuenta el lugar más frío.',
  'humidity-was-kept-while-cooking':
    'La humedad se mantuvo durante la cocción: vapor u horno sellado durante la mitad del tiempo de cocción y por lo menos una hora, terminando a 145 °F (62.8 °C) o más; o 90 % de humedad relativa durante una cuarta parte y por lo menos una hora; o una bolsa sellada a prueba de humedad; o una pieza de por lo menos 10 lb (4.5 kg) en un horno de por lo menos 250 °F (121 °C) todo el tiempo.',
  'roast-meat-uncured': 'Carne asada, sin curar',
  'a-whole-piece-of-beef':
    'Una pieza entera de res, cerdo o cordero, sazonada por fuera, asada, enfriada y empacada. Totalmente cocida, no estable sin refrigeración. No es para aves, ni para carne inyectada o enrollada.',
  'ready-to-eat-for-the': 'Lista para comer, para el público en general, casi siempre rebanada fría; se conserva refrigerada.',
  'weighing-ingredients-and-seasoning': 'Pesaje de ingredientes y sazonado',
  roasting: 'Asado',
  'survival-of-salmonella-and-other': 'Supervivencia de Salmonella y otros patógenos',
  'roasts-are-cooked-to-low':
    'Los asados se cuecen a temperaturas bajas; solo la temperatura y el tiempo juntos eliminan, y una superficie seca protege lo que tiene encima.',
  'roasting-and-humidity-while-roasting': 'Asado, y “Humedad durante el asado”.',
  'toxin-of-staphylococcus-aureus-formed-while': 'Toxina de Staphylococcus aureus, formada mientras la pieza se calienta despacio',
  'a-big-piece-in-a': 'Una pieza grande en un horno bajo pasa horas a temperaturas a las que crece; la cocción no destruye su toxina.',
  'come-up-time-at-roasting': 'Tiempo de calentamiento en “Asado”.',
  'growth-of-clostridium-perfringens-and-clostridium':
    'Crecimiento de Clostridium perfringens y Clostridium botulinum a partir de esporas que sobreviven a la cocción',
  'uncured-meat-has-nothing-but': 'A la carne sin curar solo la rapidez la protege, y las piezas grandes se enfrían despacio.',
  'growth-of-listeria-monocytogenes': 'Crecimiento de Listeria monocytogenes',
  'uncured-roast-meat-has-no': 'La carne asada sin curar no tiene más barrera que el frío.',
  'pathogens-that-survive-or-form': 'Patógenos que sobreviven, o forman toxina porque la pieza se calienta demasiado despacio.',
  'temperature-in-the-core-of': 'Temperatura interna de la pieza más gruesa del horno.',
  'probe-in-the-middle-of': 'Sonda en medio de la pieza, lejos de hueso y grasa; nunca un promedio, cuenta la más baja.',
  'when-the-pieces-go-in':
    'Cuando entran las piezas, después por lo menos cada hora hasta 130 °F (54.4 °C), después por lo menos cada media hora hasta que se cumpla una fila de la tabla (práctica común, sin fuente).',
  'keep-on-roasting-until-a':
    'Siga asando hasta que se cumpla una fila de la tabla; si falló el horno, pase las piezas de inmediato a uno que funcione. Si el calentamiento tardó demasiado, retenga el lote: la cocción no destruye la toxina, así que tiene que evaluarlo una autoridad de procesos, o se decomisa. Encuentre la causa, repárela, observe el próximo lote con una lectura cada cuarto de hora y escriba qué evita que salga producto inseguro.',
  'humidity-while-roasting': 'Humedad durante el asado',
  'a-dry-surface-on-which': 'Una superficie seca en la que sobrevive Salmonella.',
  'how-humidity-was-kept-and': 'Cómo se mantuvo la humedad, y cuánto tiempo.',
  'times-at-which-steam-was':
    'Horas en que hubo vapor o estuvieron cerradas las compuertas, o la bolsa, o el peso de la pieza y la temperatura del horno; escrito como se vio.',
  'every-lot-when-roasting-ends': 'Cada lote, cuando termina el asado.',
  'hold-the-lot-without-humidity':
    'Retenga el lote. Sin humedad no vale la tabla de temperaturas y tiempos: cueza de nuevo con humedad según el consejo de una autoridad de procesos, o decomise. Encuentre por qué fallaron el vapor o la compuerta y evite que se repita.',
  'the-owner-watches-one-cook': 'El propietario observa una cocción por mes. Los registros se revisan antes del envío.',
  'growth-of-clostridium-perfringens-and-clostridium-botulinum':
    'Crecimiento de Clostridium perfringens y Clostridium botulinum mientras la pieza se enfría.',
  'temperature-in-the-core-of-the': 'Temperatura interna de la pieza más gruesa.',
  'probe-left-in-the-middle-of': 'Sonda fija en medio de la pieza.',
  'every-quarter-of-an-hour-down':
    'Cada cuarto de hora hasta 80 °F (26.7 °C), después por lo menos cada hora hasta 40 °F (4.4 °C) (práctica común, sin fuente).',
  'the-operator-at-the-chiller': 'El operador del enfriador.',
  'cut-large-pieces-spread-them':
    'Corte las piezas grandes, sepárelas y llévelas de inmediato a un lugar más frío; siga leyendo. Una etapa que no se cumple retiene el lote: una autoridad de procesos evalúa el crecimiento de Clostridium perfringens (1 log como máximo), o el lote se decomisa. Encuentre la causa, lleve el enfriador vacío a su temperatura, siga de cerca el próximo lote y escriba qué evita que salga producto inseguro.',
  'notes-roast':
    '{caution} Una tienda al por menor puede usar en su lugar la tabla del Food Code para asados enteros (3-401.11(B)); está entre los límites publicados.',
  'fermented-and-dried-sausage': 'Embutido fermentado y secado',
  'chopped-pork-cured-with-nitrite':
    'Cerdo molido, curado con nitrito, embutido, fermentado con un cultivo iniciador y secado. Nunca se calienta; estable sin refrigeración. Para un establecimiento inspeccionado; no es para aves, ni para embutido semiseco, que se cuece o se conserva en frío.',
  'ready-to-eat-for-the-general': 'Listo para comer, para el público en general, rebanado y comido sin cocer; se conserva seco y fresco.',
  fermentation: 'Fermentación',
  'toxin-of-staphylococcus-aureus-and': 'Toxina de Staphylococcus aureus, y patógenos que sobreviven a una fermentación lenta.',
  'temperature-of-the-chamber-at': 'Temperatura de la cámara en su lugar más caliente, y pH en medio de un embutido.',
  'logger-of-the-chamber-written':
    'Registrador de la cámara, anotado o enviado por sí solo. Medidor de pH ajustado con dos soluciones patrón, en una mezcla de una parte de carne y una de agua o con punta, en dos embutidos; cuenta el más alto.',
  'chamber-at-least-every-two':
    'Cámara: por lo menos cada dos horas desde que se cuelgan los embutidos hasta que se muestra pH 5.3. pH: al colgarlos, después de un día y después por lo menos cada seis horas (práctica común, sin fuente).',
  'hold-the-lot-once-too':
    'Retenga el lote. Una vez que se sumaron demasiados grados-hora antes de pH 5.3, los embutidos se analizan por toxina a la vista de una autoridad de procesos, o se decomisan; ni el secado ni la cocción la destruyen. Encuentre la causa (cultivo, azúcar, cámara, sal), pruebe el cultivo en una tanda pequeña y escriba qué evita que salga producto inseguro.',
  'logger-compared-with-a-checked':
    'Registrador comparado con un termómetro verificado, medidor de pH con sus soluciones antes de cada lote. Los registros se revisan antes del envío.',
  'water-activity': 'Actividad de agua',
  'pathogens-that-live-on-or': 'Patógenos que siguen vivos, o crecen después, en un embutido que no está bastante seco.',
  'water-activity-of-the-core': 'Actividad de agua del centro del embutido más grueso.',
  'water-activity-meter-checked-with':
    'Medidor de actividad de agua verificado con una sal patrón, o un laboratorio; la muestra se corta del centro y se cierra de inmediato.',
  'every-lot-in-three-sausages': 'Cada lote, en tres embutidos, cuando se cree que terminó el secado (práctica común, sin fuente).',
  'hang-the-lot-again-and':
    'Cuelgue de nuevo el lote y mida después de algunos días. No se empaca nada antes de que se cumpla el límite. Si no lo alcanza, retenga el lote: lo evalúa una autoridad de procesos, o se decomisa. Encuentre la causa (humedad, aire, un borde seco) y siga de cerca el próximo lote.',
  'meter-checked-with-its-standards':
    'Medidor verificado con sus patrones. Un laboratorio mide un lote de cada diez (práctica común, sin fuente).',
  'moisture-to-protein': 'Humedad a proteína',
  'a-product-that-may-not': 'Un producto que no puede llamarse embutido seco.',
  'moisture-and-protein-of-the': 'Humedad y proteína del embutido terminado, analizadas; la una dividida entre la otra.',
  'a-laboratorys-letter-it-is':
    'Carta de un laboratorio. Es una norma de etiquetado y no prueba que sea seguro: eso lo muestra la actividad de agua.',
  'every-lot-until-the-process': 'Cada lote hasta conocer el proceso, después como lo pide la aprobación de la etiqueta.',
  'the-sausage-maker-sends-the': 'El embutidor envía la muestra.',
  'dry-on-and-analyse-again': 'Siga secando y analice de nuevo, o etiquételo como lo que es. Escriba qué se hace con el lote.',
  'the-letter-is-kept-with': 'La carta se conserva con el registro. Los registros se revisan antes del envío.',
  'notes-cured-dried':
    '{caution} La fermentación y el secado deben validarse juntos para su receta, tripa y cámara: por lo menos 5 log de Salmonella y de E. coli O157:H7 y 3 log de Listeria monocytogenes (guía de FSIS sobre productos fermentados, curados con sal y secados); los grados-hora, la humedad a proteína y la actividad de agua no lo prueban. Las triquinas del cerdo son asunto del análisis de peligros: vea “Recepción de la carne”. Los grados-hora cuentan la cámara, en °F, por encima de 60 °F, hasta que una lectura muestra pH 5.3. Una fórmula con nitrato, eritorbato o ascorbato necesita un punto de control para ello. Las sales de cura son tóxicas en exceso: guárdelas bajo llave, coloreadas y marcadas con su contenido.',
  'cured-smoked-and-cooked-sausage': 'Embutido curado, ahumado y cocido',
  'chopped-pork-or-beef-cured':
    'Cerdo o res molidos, curados con nitrito, embutidos en tripa, ahumados y cocidos por completo, enfriados y empacados. Totalmente cocido, no estable sin refrigeración. No es para aves, que piden una cocción de 7 log.',
  'ready-to-eat-for-the-general-public': 'Listo para comer, para el público en general, frío o recalentado; se conserva refrigerado.',
  'smoking-and-cooking': 'Ahumado y cocción',
  'the-core-is-the-last': 'El centro es lo último que se calienta, y el ahumado solo no elimina.',
  'by-smoking-and-cooking': 'Ahumado y cocción.',
  'toxin-of-staphylococcus-aureus-formed-while-the': 'Toxina de Staphylococcus aureus, formada mientras el producto se calienta despacio',
  'smoking-holds-the-core-for': 'El ahumado mantiene el centro por horas a temperaturas a las que crece; la cocción no destruye su toxina.',
  'come-up-time-at-smoking': 'Tiempo de calentamiento en “Ahumado y cocción”.',
  'spores-survive-every-cooking-temperature':
    'Las esporas sobreviven a todas las temperaturas de cocción que se usan aquí y crecen mientras el producto está caliente.',
  'product-is-kept-at-or': 'El producto se mantiene a 41 °F (5 °C) o menos, medido cuando se guarda y cada día de trabajo.',
  'cure-accelerator-erythorbate': 'Acelerador de curado (eritorbato)',
  'more-erythorbate-or-ascorbate-than': 'Más eritorbato o ascorbato de lo permitido.',
  'weight-of-the-erythorbate-against': 'Peso del eritorbato contra el peso de la carne recortada.',
  'the-same-scale-as-for': 'La misma báscula que para la sal de cura.',
  'every-lot': 'Cada lote.',
  'do-not-mix-hold-the':
    'No mezcle. Retenga el lote, pese de nuevo y agregue más carne recortada hasta que la concentración esté dentro de su límite.',
  'records-are-reviewed-before-shipment':
    'Los registros se revisan antes del envío. Quite este punto de control si la fórmula no tiene eritorbato ni ascorbato.',
  'pathogens-that-survive-or-form-toxin': 'Patógenos que sobreviven, o forman toxina porque el producto se calienta demasiado despacio.',
  'temperature-in-the-core-of-the-thickest': 'Temperatura interna de la pieza más gruesa, en el lugar más frío del carro.',
  'probe-in-the-middle-of-the':
    'Sonda en medio de la pieza, leída sin abrir la puerta más de lo necesario; nunca un promedio, cuenta la más baja.',
  'when-the-product-goes-in':
    'Cuando entra el producto, después por lo menos cada hora hasta 130 °F (54.4 °C), después por lo menos cada media hora hasta que se cumpla una fila de la tabla (práctica común, sin fuente).',
  'the-smokehouse-operator': 'El operador del ahumadero.',
  'keep-on-cooking-until-a':
    'Siga cociendo hasta que se cumpla una fila de la tabla; si falló el ahumadero, pase el producto de inmediato a uno que funcione. Si el calentamiento tardó demasiado, retenga el lote: la cocción no destruye la toxina, así que tiene que evaluarlo una autoridad de procesos, o se decomisa. Encuentre la causa, repárela, observe el próximo lote con una lectura cada cuarto de hora y escriba qué evita que salga producto inseguro.',
  'probes-checked-in-ice-water-casings':
    'Sondas verificadas en agua con hielo. Las tripas que retienen humedad (naturales, de colágeno, celulosa, fibrosas, plásticas) no necesitan control de humedad; el producto sin tripa o con calor seco sí (guía de cocción de FSIS, pp. 26 y 31-33).',
  'growth-of-clostridium-perfringens-and-clostridium-botulinum-while':
    'Crecimiento de Clostridium perfringens y Clostridium botulinum mientras el producto se enfría.',
  'temperature-in-the-core-of-the-warmest': 'Temperatura interna de la pieza más caliente del carro.',
  'probe-in-the-middle-of-the-link': 'Sonda en medio de la pieza, fija desde la ducha hasta el enfriador.',
  'spread-the-product-and-bring':
    'Separe el producto y llévelo de inmediato a un lugar más frío; siga leyendo. Una etapa que no se cumple retiene el lote: una autoridad de procesos evalúa el crecimiento de Clostridium perfringens (1 log como máximo), o el lote se decomisa. Encuentre la causa, lleve el enfriador vacío a su temperatura, siga de cerca el próximo lote y escriba qué evita que salga producto inseguro.',
  'notes-cured-smoked-cooked':
    '{caution} Las sales de cura son tóxicas en exceso: guárdelas bajo llave, coloreadas y marcadas con su contenido. Un enfriamiento más lento para producto curado (130 a 80 °F en 5 h, 80 a 45 °F en 10 h) está entre los límites publicados; pide por lo menos 100 ppm de nitrito agregado, se dice que su edición posterior pide además 250 ppm de eritorbato, y sus cifras no están confirmadas en el original: elíjalo solo con su propio respaldo.',
  caution:
    'Un plan para comenzar, no uno validado. Verifique cada cifra en su fuente, adapte pasos, peligros y límites a lo que usted hace en realidad y tenga archivado su propio respaldo (9 CFR 417.4(a)(1)): este libro guarda registros y calcula; no valida un proceso. Deciden las normas locales, su inspector y una autoridad de procesos con licencia. Tenga en cuenta en el límite el error del termómetro (guía de cocción de FSIS, p. 20).',
  'besides-nitrite-cold': 'los límites de enfriamiento y de almacenamiento en frío no dependen del nitrito',
  'besides-nitrite-acid': 'la acidez y la sequedad lo contienen desde el segundo día',
});
